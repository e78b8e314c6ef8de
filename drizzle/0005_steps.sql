CREATE TABLE `fitting_steps` (
	`fitting` text NOT NULL,
	`position` integer NOT NULL,
	`step` integer NOT NULL,
	`at` text NOT NULL,
	`what` text NOT NULL,
	`kind` text NOT NULL,
	`record` text NOT NULL,
	`before` text,
	`after` text NOT NULL,
	`undone` integer DEFAULT false NOT NULL,
	PRIMARY KEY(`fitting`, `position`),
	FOREIGN KEY (`fitting`) REFERENCES `fittings`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `forms_kept` (
	`once` text PRIMARY KEY NOT NULL,
	`at` text NOT NULL,
	`came` text NOT NULL
);
--> statement-breakpoint
CREATE TABLE `hands` (
	`fitting` text NOT NULL,
	`device` text NOT NULL,
	`typed` text NOT NULL,
	`saved_at` text NOT NULL,
	PRIMARY KEY(`fitting`, `device`),
	FOREIGN KEY (`fitting`) REFERENCES `fittings`(`id`) ON UPDATE no action ON DELETE no action
);

--> statement-breakpoint
CREATE TRIGGER `steps_are_of_open_fittings` BEFORE INSERT ON `fitting_steps`
WHEN EXISTS (SELECT 1 FROM `fittings` WHERE `id` = NEW.`fitting` AND `closed_at` IS NOT NULL)
BEGIN
	SELECT RAISE(ABORT, 'A closed fitting is never changed or taken away.');
END;
--> statement-breakpoint
CREATE TRIGGER `hands_are_at_open_fittings` BEFORE INSERT ON `hands`
WHEN EXISTS (SELECT 1 FROM `fittings` WHERE `id` = NEW.`fitting` AND `closed_at` IS NOT NULL)
BEGIN
	SELECT RAISE(ABORT, 'A closed fitting is never changed or taken away.');
END;
