CREATE TABLE `alterations` (
	`id` text PRIMARY KEY NOT NULL,
	`revision` integer DEFAULT 1 NOT NULL,
	`fitting` text NOT NULL,
	`number` integer NOT NULL,
	`position` integer NOT NULL,
	`act` text DEFAULT '' NOT NULL,
	`intent` text NOT NULL,
	`readings` text NOT NULL,
	`measured` text,
	`state` text NOT NULL,
	`reason` text DEFAULT '' NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	`answers` text,
	`settles` text,
	`paired_with` text,
	`replaces` text,
	`added_at` text NOT NULL,
	FOREIGN KEY (`fitting`) REFERENCES `fittings`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`answers`) REFERENCES `observations`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`paired_with`) REFERENCES `alterations`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`replaces`) REFERENCES `alterations`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `alterations_number` ON `alterations` (`fitting`,`number`);--> statement-breakpoint
CREATE TABLE `fittings` (
	`id` text PRIMARY KEY NOT NULL,
	`revision` integer DEFAULT 1 NOT NULL,
	`whole_revision` integer DEFAULT 1 NOT NULL,
	`garment` text NOT NULL,
	`kind` text NOT NULL,
	`number` integer NOT NULL,
	`date` text NOT NULL,
	`from_time` text,
	`to_time` text,
	`tried` text,
	`toile` text,
	`on_version` text NOT NULL,
	`foundation` text,
	`worn` text,
	`state_of_toile` text NOT NULL,
	`as_sewn` text NOT NULL,
	`check_measures` text NOT NULL,
	`shoes` text DEFAULT '' NOT NULL,
	`heel` real,
	`pinned_by` text DEFAULT '' NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	`bring` text DEFAULT '' NOT NULL,
	`pins_in` integer,
	`pins_out` integer,
	`added_at` text NOT NULL,
	`closed_at` text,
	`carried_into` text,
	FOREIGN KEY (`garment`) REFERENCES `garments`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`toile`) REFERENCES `toiles`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`on_version`) REFERENCES `versions`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`foundation`) REFERENCES `foundations`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`carried_into`) REFERENCES `versions`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `fittings_number` ON `fittings` (`garment`,`kind`,`number`);--> statement-breakpoint
CREATE TABLE `observation_verdicts` (
	`id` text PRIMARY KEY NOT NULL,
	`observation` text NOT NULL,
	`fitting` text NOT NULL,
	`verdict` text NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`observation`) REFERENCES `observations`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`fitting`) REFERENCES `fittings`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `observations` (
	`id` text PRIMARY KEY NOT NULL,
	`revision` integer DEFAULT 1 NOT NULL,
	`fitting` text NOT NULL,
	`letter` text NOT NULL,
	`seen_at` text NOT NULL,
	`what` text NOT NULL,
	`how_bad` integer NOT NULL,
	`posture` text NOT NULL,
	`state` text NOT NULL,
	`answered_by` text DEFAULT '' NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	`added_at` text NOT NULL,
	FOREIGN KEY (`fitting`) REFERENCES `fittings`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `observations_letter` ON `observations` (`fitting`,`letter`);--> statement-breakpoint
CREATE TABLE `withdrawals` (
	`alteration` text PRIMARY KEY NOT NULL,
	`version` text,
	`note` text DEFAULT '' NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`alteration`) REFERENCES `alterations`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`version`) REFERENCES `versions`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `garments` (
	`id` text PRIMARY KEY NOT NULL,
	`revision` integer DEFAULT 1 NOT NULL,
	`number` integer NOT NULL,
	`name` text NOT NULL,
	`wearer` text NOT NULL,
	`made_for` text DEFAULT '' NOT NULL,
	`needed_on` text,
	`cloth` text DEFAULT '' NOT NULL,
	`ease_preset` text,
	`sheet` text,
	`note` text DEFAULT '' NOT NULL,
	`added_at` text NOT NULL,
	FOREIGN KEY (`wearer`) REFERENCES `wearers`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`sheet`) REFERENCES `sheets`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `garments_number` ON `garments` (`number`);--> statement-breakpoint
CREATE TABLE `lining_choices` (
	`garment` text NOT NULL,
	`position` integer NOT NULL,
	`version` text NOT NULL,
	`cloth` text DEFAULT '' NOT NULL,
	`allowance` real NOT NULL,
	`allowances` text NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	`chosen_at` text NOT NULL,
	FOREIGN KEY (`garment`) REFERENCES `garments`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`version`) REFERENCES `versions`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `lining_choices_position` ON `lining_choices` (`garment`,`position`);--> statement-breakpoint
CREATE TABLE `settlements` (
	`id` text PRIMARY KEY NOT NULL,
	`version` text NOT NULL,
	`code` text NOT NULL,
	`where` text NOT NULL,
	`how` text NOT NULL,
	`alteration` text,
	`sentence` text NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`version`) REFERENCES `versions`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`alteration`) REFERENCES `alterations`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `toile_states` (
	`toile` text NOT NULL,
	`position` integer NOT NULL,
	`state` text NOT NULL,
	`date` text NOT NULL,
	`stitched_to` text NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	FOREIGN KEY (`toile`) REFERENCES `toiles`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`stitched_to`) REFERENCES `versions`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `toile_states_position` ON `toile_states` (`toile`,`position`);--> statement-breakpoint
CREATE TABLE `toiles` (
	`id` text PRIMARY KEY NOT NULL,
	`revision` integer DEFAULT 1 NOT NULL,
	`garment` text NOT NULL,
	`number` integer NOT NULL,
	`cut_from` text NOT NULL,
	`stitched_to` text NOT NULL,
	`cloth` text DEFAULT '' NOT NULL,
	`allowance` real NOT NULL,
	`allowances` text NOT NULL,
	`state` text NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	`added_at` text NOT NULL,
	FOREIGN KEY (`garment`) REFERENCES `garments`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`cut_from`) REFERENCES `versions`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`stitched_to`) REFERENCES `versions`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `toiles_number` ON `toiles` (`garment`,`number`);--> statement-breakpoint
CREATE TABLE `versions` (
	`id` text PRIMARY KEY NOT NULL,
	`garment` text NOT NULL,
	`number` integer NOT NULL,
	`previous` text,
	`reason` text NOT NULL,
	`fitting` text,
	`withdrew` text,
	`source` text,
	`source_name` text DEFAULT '' NOT NULL,
	`draft` text NOT NULL,
	`alterations` text NOT NULL,
	`steps` text NOT NULL,
	`unplaced` text NOT NULL,
	`queries` text NOT NULL,
	`engine_version` text NOT NULL,
	`created_at` text NOT NULL,
	FOREIGN KEY (`garment`) REFERENCES `garments`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`previous`) REFERENCES `versions`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`fitting`) REFERENCES `fittings`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`withdrew`) REFERENCES `alterations`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `versions_number` ON `versions` (`garment`,`number`);--> statement-breakpoint
CREATE TABLE `entries` (
	`number` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`at` text NOT NULL,
	`what` text NOT NULL,
	`sentence` text NOT NULL,
	`garment` text,
	`wearer` text,
	FOREIGN KEY (`garment`) REFERENCES `garments`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`wearer`) REFERENCES `wearers`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `forgetting` (
	`wearer` text PRIMARY KEY NOT NULL,
	`at` text NOT NULL,
	`sentence` text NOT NULL,
	FOREIGN KEY (`wearer`) REFERENCES `wearers`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `notes` (
	`id` text PRIMARY KEY NOT NULL,
	`revision` integer DEFAULT 1 NOT NULL,
	`garment` text,
	`wearer` text,
	`feature` text,
	`text` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`garment`) REFERENCES `garments`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`wearer`) REFERENCES `wearers`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `foundations` (
	`id` text PRIMARY KEY NOT NULL,
	`revision` integer DEFAULT 1 NOT NULL,
	`wearer` text NOT NULL,
	`name` text NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	`added_at` text NOT NULL,
	FOREIGN KEY (`wearer`) REFERENCES `wearers`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `sheet_measures` (
	`sheet` text NOT NULL,
	`name` text NOT NULL,
	`mm` real NOT NULL,
	PRIMARY KEY(`sheet`, `name`),
	FOREIGN KEY (`sheet`) REFERENCES `sheets`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `sheets` (
	`id` text PRIMARY KEY NOT NULL,
	`revision` integer DEFAULT 1 NOT NULL,
	`wearer` text NOT NULL,
	`foundation` text NOT NULL,
	`date` text NOT NULL,
	`taken_by` text DEFAULT '' NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	`added_at` text NOT NULL,
	FOREIGN KEY (`wearer`) REFERENCES `wearers`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`foundation`) REFERENCES `foundations`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE TABLE `wearers` (
	`id` text PRIMARY KEY NOT NULL,
	`revision` integer DEFAULT 1 NOT NULL,
	`number` integer NOT NULL,
	`name` text NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	`added_at` text NOT NULL,
	`forgotten_at` text
);
--> statement-breakpoint
CREATE UNIQUE INDEX `wearers_number` ON `wearers` (`number`);