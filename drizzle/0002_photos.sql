CREATE TABLE `loose_pictures` (
	`hash` text PRIMARY KEY NOT NULL
);
--> statement-breakpoint
CREATE TABLE `photo_consents` (
	`fitting` text NOT NULL,
	`position` integer NOT NULL,
	`taking` integer NOT NULL,
	`keeping` integer NOT NULL,
	`showing` integer NOT NULL,
	`date` text NOT NULL,
	`at` text NOT NULL,
	FOREIGN KEY (`fitting`) REFERENCES `fittings`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `photo_consents_position` ON `photo_consents` (`fitting`,`position`);--> statement-breakpoint
CREATE TABLE `photo_pins` (
	`id` text PRIMARY KEY NOT NULL,
	`revision` integer DEFAULT 1 NOT NULL,
	`photo` text NOT NULL,
	`number` integer NOT NULL,
	`x` real NOT NULL,
	`y` real NOT NULL,
	`alteration` text,
	`observation` text,
	`note` text DEFAULT '' NOT NULL,
	`added_at` text NOT NULL,
	FOREIGN KEY (`photo`) REFERENCES `photos`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`alteration`) REFERENCES `alterations`(`id`) ON UPDATE no action ON DELETE no action,
	FOREIGN KEY (`observation`) REFERENCES `observations`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `photo_pins_number` ON `photo_pins` (`photo`,`number`);--> statement-breakpoint
CREATE TABLE `photos` (
	`id` text PRIMARY KEY NOT NULL,
	`revision` integer DEFAULT 1 NOT NULL,
	`fitting` text NOT NULL,
	`number` integer NOT NULL,
	`hash` text NOT NULL,
	`width` integer NOT NULL,
	`height` integer NOT NULL,
	`bytes` integer NOT NULL,
	`kind` text NOT NULL,
	`taken_at` text,
	`mirrored` integer DEFAULT false NOT NULL,
	`note` text DEFAULT '' NOT NULL,
	`consent_taking` text,
	`consent_keeping` text,
	`consent_showing` text,
	`added_at` text NOT NULL,
	FOREIGN KEY (`fitting`) REFERENCES `fittings`(`id`) ON UPDATE no action ON DELETE no action
);
--> statement-breakpoint
CREATE UNIQUE INDEX `photos_number` ON `photos` (`fitting`,`number`);--> statement-breakpoint
CREATE UNIQUE INDEX `photos_content` ON `photos` (`fitting`,`hash`);