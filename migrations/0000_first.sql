CREATE TABLE `change` (
	`id` integer PRIMARY KEY AUTOINCREMENT NOT NULL,
	`at` text NOT NULL,
	`actor` text NOT NULL,
	`request` text NOT NULL,
	`entity` text NOT NULL,
	`entity_id` text NOT NULL,
	`before` text,
	`after` text
) STRICT;
--> statement-breakpoint
CREATE INDEX `change_entity` ON `change` (`entity_id`);--> statement-breakpoint
CREATE TABLE `client` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`address` text NOT NULL,
	`email` text NOT NULL,
	`phone` text NOT NULL,
	`note` text NOT NULL,
	`birth_day` text,
	`retired_at` text,
	`revision` integer DEFAULT 1 NOT NULL,
	`created_at` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE TABLE `cloth` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`fibre` text NOT NULL,
	`width` real NOT NULL,
	`selvedge` real NOT NULL,
	`warp_shrinkage` real NOT NULL,
	`weft_shrinkage` real NOT NULL,
	`right_side` integer NOT NULL,
	`nap` integer NOT NULL,
	`thickness` real NOT NULL,
	`increment` real NOT NULL,
	`price_minor` integer NOT NULL,
	`currency` text NOT NULL,
	`note` text NOT NULL,
	`retired_at` text,
	`revision` integer DEFAULT 1 NOT NULL,
	`created_at` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE TABLE `commission` (
	`id` text PRIMARY KEY NOT NULL,
	`number` text NOT NULL,
	`quote_id` text NOT NULL,
	`customer_id` text NOT NULL,
	`day` text NOT NULL,
	`due_day` text,
	`state` text NOT NULL,
	`note` text NOT NULL,
	`revision` integer DEFAULT 1 NOT NULL,
	`created_at` text NOT NULL,
	FOREIGN KEY (`quote_id`) REFERENCES `quote`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`customer_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `commission_number_unique` ON `commission` (`number`);--> statement-breakpoint
CREATE UNIQUE INDEX `commission_quote_id_unique` ON `commission` (`quote_id`);--> statement-breakpoint
CREATE TABLE `counter` (
	`name` text PRIMARY KEY NOT NULL,
	`next` integer NOT NULL
) STRICT;
--> statement-breakpoint
CREATE TABLE `document` (
	`id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`quote_id` text NOT NULL,
	`garment_id` text,
	`name` text NOT NULL,
	`hash` text NOT NULL,
	`bytes` integer NOT NULL,
	`pages` integer NOT NULL,
	`created_at` text NOT NULL,
	FOREIGN KEY (`quote_id`) REFERENCES `quote`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`garment_id`) REFERENCES `garment`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE TABLE `garment` (
	`id` text PRIMARY KEY NOT NULL,
	`commission_id` text NOT NULL,
	`quote_garment_id` text NOT NULL,
	`copy` integer NOT NULL,
	`position` integer NOT NULL,
	FOREIGN KEY (`commission_id`) REFERENCES `commission`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`quote_garment_id`) REFERENCES `quote_garment`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `garment_copy` ON `garment` (`quote_garment_id`,`copy`);--> statement-breakpoint
CREATE TABLE `measurement_set` (
	`id` text PRIMARY KEY NOT NULL,
	`client_id` text NOT NULL,
	`day` text NOT NULL,
	`taken_by` text NOT NULL,
	`over` text NOT NULL,
	`note` text NOT NULL,
	`unit` text NOT NULL,
	`measures` text NOT NULL,
	`supersedes` text,
	`used_at` text,
	`revision` integer DEFAULT 1 NOT NULL,
	`created_at` text NOT NULL,
	FOREIGN KEY (`client_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`supersedes`) REFERENCES `measurement_set`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE INDEX `measurement_set_client` ON `measurement_set` (`client_id`);--> statement-breakpoint
CREATE TABLE `quote` (
	`id` text PRIMARY KEY NOT NULL,
	`number` text NOT NULL,
	`customer_id` text NOT NULL,
	`day` text NOT NULL,
	`snapshot` text NOT NULL,
	`snapshot_version` integer NOT NULL,
	`supersedes` text,
	`created_at` text NOT NULL,
	FOREIGN KEY (`customer_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`supersedes`) REFERENCES `quote`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `quote_number_unique` ON `quote` (`number`);--> statement-breakpoint
CREATE TABLE `quote_garment` (
	`id` text PRIMARY KEY NOT NULL,
	`quote_id` text NOT NULL,
	`position` integer NOT NULL,
	`wearer_id` text NOT NULL,
	`measurement_set_id` text NOT NULL,
	`cloth_id` text,
	`construction` text NOT NULL,
	`quantity` integer NOT NULL,
	FOREIGN KEY (`quote_id`) REFERENCES `quote`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`wearer_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`measurement_set_id`) REFERENCES `measurement_set`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`cloth_id`) REFERENCES `cloth`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `quote_garment_position` ON `quote_garment` (`quote_id`,`position`);--> statement-breakpoint
CREATE TABLE `quote_state` (
	`quote_id` text PRIMARY KEY NOT NULL,
	`state` text NOT NULL,
	`at` text NOT NULL,
	`revision` integer DEFAULT 1 NOT NULL,
	FOREIGN KEY (`quote_id`) REFERENCES `quote`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE TABLE `step` (
	`id` text PRIMARY KEY NOT NULL,
	`garment_id` text NOT NULL,
	`key` text NOT NULL,
	`stage` text NOT NULL,
	`position` integer NOT NULL,
	`name` text NOT NULL,
	`minutes` text NOT NULL,
	`done_at` text,
	`done_by` text,
	`revision` integer DEFAULT 1 NOT NULL,
	FOREIGN KEY (`garment_id`) REFERENCES `garment`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `step_key` ON `step` (`garment_id`,`key`);--> statement-breakpoint
CREATE TABLE `workroom` (
	`id` text PRIMARY KEY NOT NULL,
	`kind` text NOT NULL,
	`settings` text NOT NULL,
	`revision` integer DEFAULT 1 NOT NULL,
	`created_at` text NOT NULL
) STRICT;
