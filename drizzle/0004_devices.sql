CREATE TABLE `passphrase` (
	`one` integer PRIMARY KEY NOT NULL,
	`salt` text NOT NULL,
	`hash` text NOT NULL,
	`cost` integer NOT NULL,
	`set_at` text NOT NULL
);
--> statement-breakpoint
CREATE TABLE `sign_ins` (
	`id` text PRIMARY KEY NOT NULL,
	`token_hash` text NOT NULL,
	`device` text NOT NULL,
	`address` text NOT NULL,
	`began_at` text NOT NULL,
	`seen_at` text NOT NULL,
	`ended_at` text
);
--> statement-breakpoint
CREATE UNIQUE INDEX `sign_ins_token` ON `sign_ins` (`token_hash`);