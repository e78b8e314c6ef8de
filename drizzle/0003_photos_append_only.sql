-- The photos of a closed fitting, and the pins on them, stay as they are. They give way to two things only, each of which
-- leaves an entry: forgetting the wearer, and the wearer's word that they are no longer to be kept.
CREATE TRIGGER `photos_are_kept_with_consent` BEFORE INSERT ON `photos`
WHEN NOT EXISTS (SELECT 1 FROM `photo_consents` WHERE `fitting` = NEW.`fitting` AND `taking` = 1 AND `keeping` = 1
	AND `position` = (SELECT max(`position`) FROM `photo_consents` WHERE `fitting` = NEW.`fitting`))
BEGIN
	SELECT RAISE(ABORT, 'A photo is kept only where the wearer agreed to it.');
END;
--> statement-breakpoint
CREATE TRIGGER `photos_of_closed_fittings_are_never_added` BEFORE INSERT ON `photos`
WHEN EXISTS (SELECT 1 FROM `fittings` WHERE `id` = NEW.`fitting` AND `closed_at` IS NOT NULL)
	OR EXISTS (SELECT 1 FROM `photos` JOIN `fittings` ON `fittings`.`id` = `photos`.`fitting` WHERE `photos`.`id` = NEW.`id` AND `closed_at` IS NOT NULL)
BEGIN
	SELECT RAISE(ABORT, 'The photos of a closed fitting are never changed, added to or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `photos_of_closed_fittings_are_never_changed` BEFORE UPDATE ON `photos`
WHEN EXISTS (SELECT 1 FROM `fittings` WHERE `id` = OLD.`fitting` AND `closed_at` IS NOT NULL)
BEGIN
	SELECT RAISE(ABORT, 'The photos of a closed fitting are never changed, added to or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `photos_of_closed_fittings_are_never_taken_away` BEFORE DELETE ON `photos`
WHEN EXISTS (SELECT 1 FROM `fittings` WHERE `id` = OLD.`fitting` AND `closed_at` IS NOT NULL)
	AND NOT EXISTS (SELECT 1 FROM `forgetting` JOIN `garments` ON `garments`.`wearer` = `forgetting`.`wearer`
		WHERE `garments`.`id` = (SELECT `garment` FROM `fittings` WHERE `id` = OLD.`fitting`))
	AND NOT EXISTS (SELECT 1 FROM `photo_consents` WHERE `fitting` = OLD.`fitting` AND `keeping` = 0
		AND `position` = (SELECT max(`position`) FROM `photo_consents` WHERE `fitting` = OLD.`fitting`))
BEGIN
	SELECT RAISE(ABORT, 'The photos of a closed fitting are never changed, added to or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `photos_keep_their_names` BEFORE UPDATE ON `photos`
WHEN NOT (OLD.`id` IS NEW.`id` AND OLD.`fitting` IS NEW.`fitting` AND OLD.`number` IS NEW.`number`)
BEGIN
	SELECT RAISE(ABORT, 'A photo keeps its fitting and its number.');
END;
--> statement-breakpoint
CREATE TRIGGER `photo_pins_of_closed_fittings_are_never_added` BEFORE INSERT ON `photo_pins`
WHEN EXISTS (SELECT 1 FROM `photos` JOIN `fittings` ON `fittings`.`id` = `photos`.`fitting` WHERE `photos`.`id` = NEW.`photo` AND `closed_at` IS NOT NULL)
	OR EXISTS (SELECT 1 FROM `photo_pins` JOIN `photos` ON `photos`.`id` = `photo_pins`.`photo` JOIN `fittings` ON `fittings`.`id` = `photos`.`fitting`
		WHERE `photo_pins`.`id` = NEW.`id` AND `closed_at` IS NOT NULL)
BEGIN
	SELECT RAISE(ABORT, 'The pins on the photos of a closed fitting are never changed, added to or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `photo_pins_of_closed_fittings_are_never_changed` BEFORE UPDATE ON `photo_pins`
WHEN EXISTS (SELECT 1 FROM `photos` JOIN `fittings` ON `fittings`.`id` = `photos`.`fitting` WHERE `photos`.`id` = OLD.`photo` AND `closed_at` IS NOT NULL)
BEGIN
	SELECT RAISE(ABORT, 'The pins on the photos of a closed fitting are never changed, added to or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `photo_pins_of_closed_fittings_are_never_taken_away` BEFORE DELETE ON `photo_pins`
WHEN EXISTS (SELECT 1 FROM `photos` JOIN `fittings` ON `fittings`.`id` = `photos`.`fitting` WHERE `photos`.`id` = OLD.`photo` AND `closed_at` IS NOT NULL)
	AND NOT EXISTS (SELECT 1 FROM `forgetting` JOIN `garments` ON `garments`.`wearer` = `forgetting`.`wearer`
		WHERE `garments`.`id` = (SELECT `fittings`.`garment` FROM `photos` JOIN `fittings` ON `fittings`.`id` = `photos`.`fitting` WHERE `photos`.`id` = OLD.`photo`))
	AND NOT EXISTS (SELECT 1 FROM `photo_consents` JOIN `photos` ON `photos`.`fitting` = `photo_consents`.`fitting`
		WHERE `photos`.`id` = OLD.`photo` AND `photo_consents`.`keeping` = 0
		AND `position` = (SELECT max(`position`) FROM `photo_consents` WHERE `fitting` = `photos`.`fitting`))
BEGIN
	SELECT RAISE(ABORT, 'The pins on the photos of a closed fitting are never changed, added to or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `photo_pins_keep_their_names` BEFORE UPDATE ON `photo_pins`
WHEN NOT (OLD.`id` IS NEW.`id` AND OLD.`photo` IS NEW.`photo` AND OLD.`number` IS NEW.`number`)
BEGIN
	SELECT RAISE(ABORT, 'A pin keeps its photo and its number.');
END;
--> statement-breakpoint
CREATE TRIGGER `photo_consents_are_never_replaced` BEFORE INSERT ON `photo_consents`
WHEN EXISTS (SELECT 1 FROM `photo_consents` WHERE `fitting` = NEW.`fitting` AND `position` = NEW.`position`)
BEGIN
	SELECT RAISE(ABORT, 'What a wearer agreed to is never changed or taken away, only added to.');
END;
--> statement-breakpoint
CREATE TRIGGER `photo_consents_are_never_changed` BEFORE UPDATE ON `photo_consents`
BEGIN
	SELECT RAISE(ABORT, 'What a wearer agreed to is never changed or taken away, only added to.');
END;
--> statement-breakpoint
CREATE TRIGGER `photo_consents_are_never_taken_away` BEFORE DELETE ON `photo_consents`
WHEN NOT EXISTS (SELECT 1 FROM `forgetting` JOIN `garments` ON `garments`.`wearer` = `forgetting`.`wearer`
	WHERE `garments`.`id` = (SELECT `garment` FROM `fittings` WHERE `id` = OLD.`fitting`))
BEGIN
	SELECT RAISE(ABORT, 'What a wearer agreed to is never changed or taken away, only added to.');
END;
--> statement-breakpoint
CREATE TRIGGER `photos_that_are_erased_leave_an_entry` AFTER INSERT ON `photo_consents`
WHEN NEW.`keeping` = 0 AND EXISTS (SELECT 1 FROM `photos` WHERE `fitting` = NEW.`fitting`)
BEGIN
	INSERT INTO `entries` (`at`, `what`, `sentence`, `garment`)
	SELECT NEW.`at`, 'photos-erased', 'The photos of ' || CASE `kind` WHEN 'fitting' THEN 'fitting ' ELSE 'table work ' END || `number`
		|| ' were erased: the wearer does not want them kept.', `garment` FROM `fittings` WHERE `id` = NEW.`fitting`;
END;
