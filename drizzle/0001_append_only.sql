-- What is closed stays closed. Versions, closed fittings with what is in them, and the records that say what became of
-- something are only ever added to. Forgetting a wearer is the one exception: it may empty words and body measures, and
-- nothing that a line was drawn from. `INSERT OR REPLACE` would take a row away without its delete trigger: the insert
-- triggers refuse what already is. A migration that adds a column to one of these tables must renew its update trigger.
CREATE TRIGGER `versions_are_never_replaced` BEFORE INSERT ON `versions`
WHEN EXISTS (SELECT 1 FROM `versions` WHERE `id` = NEW.`id` OR (`garment` = NEW.`garment` AND `number` = NEW.`number`))
BEGIN
	SELECT RAISE(ABORT, 'Versions are frozen: nothing in one is ever changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `versions_are_never_changed` BEFORE UPDATE ON `versions`
WHEN NOT (
	EXISTS (SELECT 1 FROM `forgetting` JOIN `garments` ON `garments`.`wearer` = `forgetting`.`wearer`
		WHERE `garments`.`id` = OLD.`garment`)
	AND OLD.`id` IS NEW.`id` AND OLD.`garment` IS NEW.`garment` AND OLD.`number` IS NEW.`number` AND OLD.`previous` IS NEW.`previous` AND OLD.`reason` IS NEW.`reason` AND OLD.`fitting` IS NEW.`fitting` AND OLD.`withdrew` IS NEW.`withdrew` AND OLD.`source` IS NEW.`source` AND OLD.`draft` IS NEW.`draft` AND OLD.`alterations` IS NEW.`alterations` AND OLD.`steps` IS NEW.`steps` AND OLD.`unplaced` IS NEW.`unplaced` AND OLD.`engine_version` IS NEW.`engine_version` AND OLD.`created_at` IS NEW.`created_at`
)
BEGIN
	SELECT RAISE(ABORT, 'Versions are frozen: nothing in one is ever changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `versions_are_never_taken_away` BEFORE DELETE ON `versions`
BEGIN
	SELECT RAISE(ABORT, 'Versions are frozen: nothing in one is ever changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `settlements_are_never_replaced` BEFORE INSERT ON `settlements`
WHEN EXISTS (SELECT 1 FROM `settlements` WHERE `id` = NEW.`id`)
BEGIN
	SELECT RAISE(ABORT, 'How a query was settled is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `settlements_are_never_changed` BEFORE UPDATE ON `settlements`
WHEN NOT (
	EXISTS (SELECT 1 FROM `forgetting` JOIN `garments` ON `garments`.`wearer` = `forgetting`.`wearer`
		WHERE `garments`.`id` = (SELECT `garment` FROM `versions` WHERE `id` = OLD.`version`))
	AND OLD.`id` IS NEW.`id` AND OLD.`version` IS NEW.`version` AND OLD.`code` IS NEW.`code` AND OLD.`where` IS NEW.`where` AND OLD.`how` IS NEW.`how` AND OLD.`alteration` IS NEW.`alteration` AND OLD.`at` IS NEW.`at`
)
BEGIN
	SELECT RAISE(ABORT, 'How a query was settled is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `settlements_are_never_taken_away` BEFORE DELETE ON `settlements`
BEGIN
	SELECT RAISE(ABORT, 'How a query was settled is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `observation_verdicts_are_never_replaced` BEFORE INSERT ON `observation_verdicts`
WHEN EXISTS (SELECT 1 FROM `observation_verdicts` WHERE `id` = NEW.`id`)
BEGIN
	SELECT RAISE(ABORT, 'What was said of an observation is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `observation_verdicts_are_never_changed` BEFORE UPDATE ON `observation_verdicts`
WHEN NOT (
	EXISTS (SELECT 1 FROM `forgetting` JOIN `garments` ON `garments`.`wearer` = `forgetting`.`wearer`
		WHERE `garments`.`id` = (SELECT `garment` FROM `fittings` WHERE `id` = OLD.`fitting`))
	AND OLD.`id` IS NEW.`id` AND OLD.`observation` IS NEW.`observation` AND OLD.`fitting` IS NEW.`fitting` AND OLD.`verdict` IS NEW.`verdict` AND OLD.`at` IS NEW.`at`
)
BEGIN
	SELECT RAISE(ABORT, 'What was said of an observation is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `observation_verdicts_are_never_taken_away` BEFORE DELETE ON `observation_verdicts`
BEGIN
	SELECT RAISE(ABORT, 'What was said of an observation is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `withdrawals_are_never_replaced` BEFORE INSERT ON `withdrawals`
WHEN EXISTS (SELECT 1 FROM `withdrawals` WHERE `alteration` = NEW.`alteration`)
BEGIN
	SELECT RAISE(ABORT, 'A withdrawal is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `withdrawals_are_never_changed` BEFORE UPDATE ON `withdrawals`
WHEN NOT (
	EXISTS (SELECT 1 FROM `forgetting` JOIN `garments` ON `garments`.`wearer` = `forgetting`.`wearer`
		WHERE `garments`.`id` = (SELECT `fittings`.`garment` FROM `alterations` JOIN `fittings` ON `fittings`.`id` = `alterations`.`fitting` WHERE `alterations`.`id` = OLD.`alteration`))
	AND OLD.`alteration` IS NEW.`alteration` AND OLD.`version` IS NEW.`version` AND OLD.`at` IS NEW.`at`
)
BEGIN
	SELECT RAISE(ABORT, 'A withdrawal is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `withdrawals_are_never_taken_away` BEFORE DELETE ON `withdrawals`
BEGIN
	SELECT RAISE(ABORT, 'A withdrawal is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `toile_states_are_never_replaced` BEFORE INSERT ON `toile_states`
WHEN EXISTS (SELECT 1 FROM `toile_states` WHERE `toile` = NEW.`toile` AND `position` = NEW.`position`)
BEGIN
	SELECT RAISE(ABORT, 'What became of a toile is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `toile_states_are_never_changed` BEFORE UPDATE ON `toile_states`
WHEN NOT (
	EXISTS (SELECT 1 FROM `forgetting` JOIN `garments` ON `garments`.`wearer` = `forgetting`.`wearer`
		WHERE `garments`.`id` = (SELECT `garment` FROM `toiles` WHERE `id` = OLD.`toile`))
	AND OLD.`toile` IS NEW.`toile` AND OLD.`position` IS NEW.`position` AND OLD.`state` IS NEW.`state` AND OLD.`date` IS NEW.`date` AND OLD.`stitched_to` IS NEW.`stitched_to`
)
BEGIN
	SELECT RAISE(ABORT, 'What became of a toile is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `toile_states_are_never_taken_away` BEFORE DELETE ON `toile_states`
BEGIN
	SELECT RAISE(ABORT, 'What became of a toile is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `lining_choices_are_never_replaced` BEFORE INSERT ON `lining_choices`
WHEN EXISTS (SELECT 1 FROM `lining_choices` WHERE `garment` = NEW.`garment` AND `position` = NEW.`position`)
BEGIN
	SELECT RAISE(ABORT, 'A choice of lining is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `lining_choices_are_never_changed` BEFORE UPDATE ON `lining_choices`
WHEN NOT (
	EXISTS (SELECT 1 FROM `forgetting` JOIN `garments` ON `garments`.`wearer` = `forgetting`.`wearer`
		WHERE `garments`.`id` = OLD.`garment`)
	AND OLD.`garment` IS NEW.`garment` AND OLD.`position` IS NEW.`position` AND OLD.`version` IS NEW.`version` AND OLD.`cloth` IS NEW.`cloth` AND OLD.`allowance` IS NEW.`allowance` AND OLD.`allowances` IS NEW.`allowances` AND OLD.`chosen_at` IS NEW.`chosen_at`
)
BEGIN
	SELECT RAISE(ABORT, 'A choice of lining is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `lining_choices_are_never_taken_away` BEFORE DELETE ON `lining_choices`
BEGIN
	SELECT RAISE(ABORT, 'A choice of lining is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `closed_fittings_are_never_replaced` BEFORE INSERT ON `fittings`
WHEN EXISTS (SELECT 1 FROM `fittings` WHERE `closed_at` IS NOT NULL
	AND (`id` = NEW.`id` OR (`garment` = NEW.`garment` AND `kind` = NEW.`kind` AND `number` = NEW.`number`)))
BEGIN
	SELECT RAISE(ABORT, 'A closed fitting is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `closed_fittings_are_never_changed` BEFORE UPDATE ON `fittings`
WHEN OLD.`closed_at` IS NOT NULL AND NOT (
	EXISTS (SELECT 1 FROM `forgetting` JOIN `garments` ON `garments`.`wearer` = `forgetting`.`wearer`
		WHERE `garments`.`id` = OLD.`garment`)
	AND OLD.`id` IS NEW.`id` AND OLD.`revision` IS NEW.`revision` AND OLD.`whole_revision` IS NEW.`whole_revision` AND OLD.`garment` IS NEW.`garment` AND OLD.`kind` IS NEW.`kind` AND OLD.`number` IS NEW.`number` AND OLD.`date` IS NEW.`date` AND OLD.`from_time` IS NEW.`from_time` AND OLD.`to_time` IS NEW.`to_time` AND OLD.`tried` IS NEW.`tried` AND OLD.`toile` IS NEW.`toile` AND OLD.`on_version` IS NEW.`on_version` AND OLD.`foundation` IS NEW.`foundation` AND OLD.`worn` IS NEW.`worn` AND OLD.`state_of_toile` IS NEW.`state_of_toile` AND OLD.`as_sewn` IS NEW.`as_sewn` AND OLD.`pins_in` IS NEW.`pins_in` AND OLD.`pins_out` IS NEW.`pins_out` AND OLD.`added_at` IS NEW.`added_at` AND OLD.`closed_at` IS NEW.`closed_at` AND OLD.`carried_into` IS NEW.`carried_into`
)
BEGIN
	SELECT RAISE(ABORT, 'A closed fitting is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `closed_fittings_are_never_taken_away` BEFORE DELETE ON `fittings`
WHEN OLD.`closed_at` IS NOT NULL
BEGIN
	SELECT RAISE(ABORT, 'A closed fitting is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `fittings_keep_their_names` BEFORE UPDATE ON `fittings`
WHEN NOT (OLD.`id` IS NEW.`id` AND OLD.`garment` IS NEW.`garment` AND OLD.`kind` IS NEW.`kind` AND OLD.`number` IS NEW.`number`)
BEGIN
	SELECT RAISE(ABORT, 'A fitting keeps its garment and its number.');
END;
--> statement-breakpoint
CREATE TRIGGER `observations_of_closed_fittings_are_never_added` BEFORE INSERT ON `observations`
WHEN EXISTS (SELECT 1 FROM `fittings` WHERE `id` = NEW.`fitting` AND `closed_at` IS NOT NULL)
	OR EXISTS (SELECT 1 FROM `observations` JOIN `fittings` ON `fittings`.`id` = `observations`.`fitting` WHERE `observations`.`id` = NEW.`id` AND `closed_at` IS NOT NULL)
BEGIN
	SELECT RAISE(ABORT, 'The observations of a closed fitting are never changed, added to or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `observations_of_closed_fittings_are_never_changed` BEFORE UPDATE ON `observations`
WHEN EXISTS (SELECT 1 FROM `fittings` WHERE `id` = OLD.`fitting` AND `closed_at` IS NOT NULL) AND NOT (
	EXISTS (SELECT 1 FROM `forgetting` JOIN `garments` ON `garments`.`wearer` = `forgetting`.`wearer`
		WHERE `garments`.`id` = (SELECT `garment` FROM `fittings` WHERE `id` = OLD.`fitting`))
	AND OLD.`id` IS NEW.`id` AND OLD.`revision` IS NEW.`revision` AND OLD.`fitting` IS NEW.`fitting` AND OLD.`letter` IS NEW.`letter` AND OLD.`seen_at` IS NEW.`seen_at` AND OLD.`how_bad` IS NEW.`how_bad` AND OLD.`posture` IS NEW.`posture` AND OLD.`state` IS NEW.`state` AND OLD.`added_at` IS NEW.`added_at`
)
BEGIN
	SELECT RAISE(ABORT, 'The observations of a closed fitting are never changed, added to or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `observations_of_closed_fittings_are_never_taken_away` BEFORE DELETE ON `observations`
WHEN EXISTS (SELECT 1 FROM `fittings` WHERE `id` = OLD.`fitting` AND `closed_at` IS NOT NULL)
BEGIN
	SELECT RAISE(ABORT, 'The observations of a closed fitting are never changed, added to or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `observations_keep_their_names` BEFORE UPDATE ON `observations`
WHEN NOT (OLD.`id` IS NEW.`id` AND OLD.`fitting` IS NEW.`fitting` AND OLD.`letter` IS NEW.`letter`)
BEGIN
	SELECT RAISE(ABORT, 'An observation keeps its fitting and its letter.');
END;
--> statement-breakpoint
CREATE TRIGGER `alterations_of_closed_fittings_are_never_added` BEFORE INSERT ON `alterations`
WHEN EXISTS (SELECT 1 FROM `fittings` WHERE `id` = NEW.`fitting` AND `closed_at` IS NOT NULL)
	OR EXISTS (SELECT 1 FROM `alterations` JOIN `fittings` ON `fittings`.`id` = `alterations`.`fitting` WHERE `alterations`.`id` = NEW.`id` AND `closed_at` IS NOT NULL)
BEGIN
	SELECT RAISE(ABORT, 'The alterations of a closed fitting are never changed, added to or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `alterations_of_closed_fittings_are_never_changed` BEFORE UPDATE ON `alterations`
WHEN EXISTS (SELECT 1 FROM `fittings` WHERE `id` = OLD.`fitting` AND `closed_at` IS NOT NULL) AND NOT (
	EXISTS (SELECT 1 FROM `forgetting` JOIN `garments` ON `garments`.`wearer` = `forgetting`.`wearer`
		WHERE `garments`.`id` = (SELECT `garment` FROM `fittings` WHERE `id` = OLD.`fitting`))
	AND OLD.`id` IS NEW.`id` AND OLD.`revision` IS NEW.`revision` AND OLD.`fitting` IS NEW.`fitting` AND OLD.`number` IS NEW.`number` AND OLD.`position` IS NEW.`position` AND OLD.`act` IS NEW.`act` AND OLD.`intent` IS NEW.`intent` AND OLD.`readings` IS NEW.`readings` AND OLD.`measured` IS NEW.`measured` AND OLD.`state` IS NEW.`state` AND OLD.`reason` IS NEW.`reason` AND OLD.`answers` IS NEW.`answers` AND OLD.`paired_with` IS NEW.`paired_with` AND OLD.`replaces` IS NEW.`replaces` AND OLD.`added_at` IS NEW.`added_at`
)
BEGIN
	SELECT RAISE(ABORT, 'The alterations of a closed fitting are never changed, added to or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `alterations_of_closed_fittings_are_never_taken_away` BEFORE DELETE ON `alterations`
WHEN EXISTS (SELECT 1 FROM `fittings` WHERE `id` = OLD.`fitting` AND `closed_at` IS NOT NULL)
BEGIN
	SELECT RAISE(ABORT, 'The alterations of a closed fitting are never changed, added to or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `alterations_keep_their_names` BEFORE UPDATE ON `alterations`
WHEN NOT (OLD.`id` IS NEW.`id` AND OLD.`fitting` IS NEW.`fitting` AND OLD.`number` IS NEW.`number`)
BEGIN
	SELECT RAISE(ABORT, 'An alteration keeps its fitting and its number.');
END;
--> statement-breakpoint
CREATE TRIGGER `verdicts_are_said_at_open_fittings` BEFORE INSERT ON `observation_verdicts`
WHEN EXISTS (SELECT 1 FROM `fittings` WHERE `id` = NEW.`fitting` AND `closed_at` IS NOT NULL)
BEGIN
	SELECT RAISE(ABORT, 'A closed fitting is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `entries_are_never_replaced` BEFORE INSERT ON `entries`
WHEN EXISTS (SELECT 1 FROM `entries` WHERE `number` = NEW.`number`)
BEGIN
	SELECT RAISE(ABORT, 'The log is only ever added to.');
END;
--> statement-breakpoint
CREATE TRIGGER `entries_are_never_changed` BEFORE UPDATE ON `entries`
BEGIN
	SELECT RAISE(ABORT, 'The log is only ever added to.');
END;
--> statement-breakpoint
CREATE TRIGGER `entries_are_never_taken_away` BEFORE DELETE ON `entries`
BEGIN
	SELECT RAISE(ABORT, 'The log is only ever added to.');
END;
--> statement-breakpoint
CREATE TRIGGER `forgetting_leaves_an_entry` AFTER INSERT ON `forgetting`
BEGIN
	INSERT INTO `entries` (`at`, `what`, `sentence`, `wearer`) VALUES (NEW.`at`, 'forgot-wearer', NEW.`sentence`, NEW.`wearer`);
END;
