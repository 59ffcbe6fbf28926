CREATE TABLE `stock_length` (
	`id` text PRIMARY KEY NOT NULL,
	`cloth_id` text NOT NULL,
	`width` real NOT NULL,
	`place` text NOT NULL,
	`supplier` text NOT NULL,
	`note` text NOT NULL,
	`washed_at` text,
	`ordered_day` text,
	`expected_day` text,
	`arrived_day` text,
	`price_minor` integer NOT NULL,
	`currency` text NOT NULL,
	`parent_id` text,
	`revision` integer DEFAULT 1 NOT NULL,
	`created_at` text NOT NULL,
	FOREIGN KEY (`cloth_id`) REFERENCES `cloth`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`parent_id`) REFERENCES `stock_length`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE INDEX `stock_length_cloth` ON `stock_length` (`cloth_id`);--> statement-breakpoint
CREATE TABLE `stock_move` (
	`id` text PRIMARY KEY NOT NULL,
	`stock_id` text NOT NULL,
	`act` text NOT NULL,
	`garment_id` text,
	`at` text NOT NULL,
	FOREIGN KEY (`stock_id`) REFERENCES `stock_length`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`garment_id`) REFERENCES `garment`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE INDEX `stock_move_stock` ON `stock_move` (`stock_id`);--> statement-breakpoint
CREATE INDEX `stock_move_garment` ON `stock_move` (`garment_id`);--> statement-breakpoint
CREATE TABLE `supply_move` (
	`id` text PRIMARY KEY NOT NULL,
	`supply` text NOT NULL,
	`act` text NOT NULL,
	`at` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE INDEX `supply_move_supply` ON `supply_move` (`supply`);--> statement-breakpoint
CREATE TABLE `commission_note` (
	`id` text PRIMARY KEY NOT NULL,
	`commission_id` text NOT NULL,
	`kind` text NOT NULL,
	`day` text NOT NULL,
	`text` text NOT NULL,
	`removed_at` text,
	`revision` integer DEFAULT 1 NOT NULL,
	`created_at` text NOT NULL,
	FOREIGN KEY (`commission_id`) REFERENCES `commission`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE INDEX `commission_note_commission` ON `commission_note` (`commission_id`);--> statement-breakpoint
CREATE TABLE `cut_piece` (
	`garment_id` text NOT NULL,
	`piece` text NOT NULL,
	`copy` text NOT NULL,
	`at` text NOT NULL,
	PRIMARY KEY(`garment_id`, `piece`, `copy`),
	FOREIGN KEY (`garment_id`) REFERENCES `garment`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE TABLE `fitting` (
	`id` text PRIMARY KEY NOT NULL,
	`commission_id` text NOT NULL,
	`garment_id` text,
	`day` text NOT NULL,
	`time` text NOT NULL,
	`note` text NOT NULL,
	`found` text NOT NULL,
	`measurement_set_id` text,
	`minutes_added` real NOT NULL,
	`recut` text NOT NULL,
	`held_at` text,
	`removed_at` text,
	`revision` integer DEFAULT 1 NOT NULL,
	`created_at` text NOT NULL,
	FOREIGN KEY (`commission_id`) REFERENCES `commission`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`garment_id`) REFERENCES `garment`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`measurement_set_id`) REFERENCES `measurement_set`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE INDEX `fitting_commission` ON `fitting` (`commission_id`);--> statement-breakpoint
CREATE INDEX `fitting_day` ON `fitting` (`day`);--> statement-breakpoint
CREATE TABLE `laid_again` (
	`id` text PRIMARY KEY NOT NULL,
	`garment_id` text NOT NULL,
	`width` real NOT NULL,
	`length` real NOT NULL,
	`lay` text NOT NULL,
	`created_at` text NOT NULL,
	FOREIGN KEY (`garment_id`) REFERENCES `garment`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE INDEX `laid_again_garment` ON `laid_again` (`garment_id`);--> statement-breakpoint
CREATE TABLE `picture` (
	`id` text PRIMARY KEY NOT NULL,
	`commission_id` text NOT NULL,
	`name` text NOT NULL,
	`kind` text NOT NULL,
	`hash` text NOT NULL,
	`bytes` integer NOT NULL,
	`small` text,
	`removed_at` text,
	`created_at` text NOT NULL,
	FOREIGN KEY (`commission_id`) REFERENCES `commission`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE INDEX `picture_commission` ON `picture` (`commission_id`);--> statement-breakpoint
CREATE TABLE `search_entry` (
	`entity_id` text PRIMARY KEY NOT NULL,
	`row` integer NOT NULL
) STRICT;
--> statement-breakpoint
CREATE TABLE `invoice` (
	`id` text PRIMARY KEY NOT NULL,
	`number` text NOT NULL,
	`kind` text NOT NULL,
	`commission_id` text NOT NULL,
	`cancels` text,
	`day` text NOT NULL,
	`snapshot` text NOT NULL,
	`created_at` text NOT NULL,
	FOREIGN KEY (`commission_id`) REFERENCES `commission`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`cancels`) REFERENCES `invoice`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `invoice_number_unique` ON `invoice` (`number`);--> statement-breakpoint
CREATE INDEX `invoice_commission` ON `invoice` (`commission_id`);--> statement-breakpoint
CREATE INDEX `invoice_day` ON `invoice` (`day`);--> statement-breakpoint
CREATE TABLE `payment` (
	`id` text PRIMARY KEY NOT NULL,
	`commission_id` text NOT NULL,
	`day` text NOT NULL,
	`kind` text NOT NULL,
	`amount_minor` integer NOT NULL,
	`currency` text NOT NULL,
	`method` text NOT NULL,
	`due` text,
	`note` text NOT NULL,
	`number` text NOT NULL,
	`created_at` text NOT NULL,
	FOREIGN KEY (`commission_id`) REFERENCES `commission`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE UNIQUE INDEX `payment_number_unique` ON `payment` (`number`);--> statement-breakpoint
CREATE INDEX `payment_commission` ON `payment` (`commission_id`);--> statement-breakpoint
CREATE INDEX `payment_day` ON `payment` (`day`);--> statement-breakpoint
CREATE TABLE `absence` (
	`id` text PRIMARY KEY NOT NULL,
	`person_id` text,
	`from_day` text NOT NULL,
	`to_day` text NOT NULL,
	`note` text NOT NULL,
	`removed_at` text,
	`created_at` text NOT NULL,
	FOREIGN KEY (`person_id`) REFERENCES `person`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE TABLE `person` (
	`id` text PRIMARY KEY NOT NULL,
	`name` text NOT NULL,
	`skills` text NOT NULL,
	`week` text NOT NULL,
	`hand_cap` real,
	`retired_at` text,
	`revision` integer DEFAULT 1 NOT NULL,
	`created_at` text NOT NULL
) STRICT;
--> statement-breakpoint
CREATE TABLE `garment_account` (
	`garment_id` text PRIMARY KEY NOT NULL,
	`commission_id` text NOT NULL,
	`customer_id` text NOT NULL,
	`construction` text NOT NULL,
	`delivered_day` text NOT NULL,
	`account` text NOT NULL,
	`net_minor` integer NOT NULL,
	`quoted_minutes` real NOT NULL,
	`actual_minutes` real,
	`quoted_left_minor` integer NOT NULL,
	`actual_left_minor` integer,
	`quoted_cloth` real NOT NULL,
	`actual_cloth` real,
	FOREIGN KEY (`garment_id`) REFERENCES `garment`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`commission_id`) REFERENCES `commission`(`id`) ON UPDATE no action ON DELETE restrict,
	FOREIGN KEY (`customer_id`) REFERENCES `client`(`id`) ON UPDATE no action ON DELETE restrict
) STRICT;
--> statement-breakpoint
CREATE INDEX `garment_account_commission` ON `garment_account` (`commission_id`);--> statement-breakpoint
CREATE TABLE `timer` (
	`id` text PRIMARY KEY NOT NULL,
	`step_ids` text NOT NULL,
	`started_at` text NOT NULL
) STRICT;
--> statement-breakpoint
ALTER TABLE `cloth` ADD `supplier` text DEFAULT '' NOT NULL;--> statement-breakpoint
ALTER TABLE `cloth` ADD `lead_days` integer DEFAULT 7 NOT NULL;--> statement-breakpoint
ALTER TABLE `commission` ADD `event_day` text;--> statement-breakpoint
ALTER TABLE `commission` ADD `agreed_minor` integer DEFAULT 0 NOT NULL;--> statement-breakpoint
ALTER TABLE `commission` ADD `currency` text DEFAULT 'GBP' NOT NULL;--> statement-breakpoint
ALTER TABLE `commission` ADD `schedule` text DEFAULT '[]' NOT NULL;--> statement-breakpoint
ALTER TABLE `commission` ADD `cancelled_day` text;--> statement-breakpoint
CREATE INDEX `commission_state` ON `commission` (`state`,`id`);--> statement-breakpoint
CREATE INDEX `commission_customer` ON `commission` (`customer_id`);--> statement-breakpoint
ALTER TABLE `garment` ADD `dropped_at` text;--> statement-breakpoint
ALTER TABLE `garment` ADD `title` text DEFAULT '{"code":"store.kind.garment"}' NOT NULL;--> statement-breakpoint
ALTER TABLE `garment` ADD `wearer` text DEFAULT '' NOT NULL;--> statement-breakpoint
ALTER TABLE `garment` ADD `cloth_name` text DEFAULT '' NOT NULL;--> statement-breakpoint
CREATE INDEX `garment_commission` ON `garment` (`commission_id`);--> statement-breakpoint
ALTER TABLE `quote_state` ADD `short` text DEFAULT '{"customer":"","supersedes":null,"garments":[],"validUntil":"","total":{"minor":0,"currency":"GBP"}}' NOT NULL;--> statement-breakpoint
CREATE INDEX `change_kind` ON `change` (`entity`,`id`);--> statement-breakpoint
CREATE INDEX `time_entry_day` ON `time_entry` (`day`,`id`);--> statement-breakpoint
UPDATE `garment` SET
	(`title`, `wearer`, `cloth_name`) = (
		SELECT json_extract(line.value, '$.title'), json_extract(line.value, '$.wearer.name'), json_extract(line.value, '$.cloth.name')
		FROM `quote_garment` AS g JOIN `quote` AS q ON q.`id` = g.`quote_id`, json_each(q.`snapshot`, '$.lines') AS line
		WHERE g.`id` = `garment`.`quote_garment_id` AND json_extract(line.value, '$.id') = g.`id`
	);
--> statement-breakpoint
UPDATE `commission` SET
	(`agreed_minor`, `currency`) = (
		SELECT json_extract(q.`snapshot`, '$.total.minor'), json_extract(q.`snapshot`, '$.total.currency')
		FROM `quote` AS q WHERE q.`id` = `commission`.`quote_id`
	);
--> statement-breakpoint
UPDATE `quote_state` SET
	`short` = (
		SELECT json_object(
			'customer', json_extract(q.`snapshot`, '$.customer.name'),
			'supersedes', json_extract(q.`snapshot`, '$.supersedes'),
			'validUntil', json_extract(q.`snapshot`, '$.validUntil'),
			'total', json_extract(q.`snapshot`, '$.total'),
			'garments', (
				SELECT json_group_array(json_object(
					'title', json_extract(line.value, '$.title'),
					'wearer', json_extract(line.value, '$.wearer.name'),
					'quantity', json_extract(line.value, '$.quantity')
				)) FROM json_each(q.`snapshot`, '$.lines') AS line
			)
		) FROM `quote` AS q WHERE q.`id` = `quote_state`.`quote_id`
	);
--> statement-breakpoint
CREATE TRIGGER `stock_move_kept` BEFORE UPDATE ON `stock_move` BEGIN SELECT RAISE(ABORT, 'frozen: stock_move'); END;--> statement-breakpoint
CREATE TRIGGER `stock_move_not_deleted` BEFORE DELETE ON `stock_move` BEGIN SELECT RAISE(ABORT, 'frozen: stock_move'); END;--> statement-breakpoint
CREATE TRIGGER `supply_move_kept` BEFORE UPDATE ON `supply_move` BEGIN SELECT RAISE(ABORT, 'frozen: supply_move'); END;--> statement-breakpoint
CREATE TRIGGER `supply_move_not_deleted` BEFORE DELETE ON `supply_move` BEGIN SELECT RAISE(ABORT, 'frozen: supply_move'); END;--> statement-breakpoint
CREATE TRIGGER `payment_kept` BEFORE UPDATE ON `payment` BEGIN SELECT RAISE(ABORT, 'frozen: payment'); END;--> statement-breakpoint
CREATE TRIGGER `payment_not_deleted` BEFORE DELETE ON `payment` BEGIN SELECT RAISE(ABORT, 'frozen: payment'); END;--> statement-breakpoint
CREATE TRIGGER `invoice_kept` BEFORE UPDATE ON `invoice` BEGIN SELECT RAISE(ABORT, 'frozen: invoice'); END;--> statement-breakpoint
CREATE TRIGGER `invoice_not_deleted` BEFORE DELETE ON `invoice` BEGIN SELECT RAISE(ABORT, 'frozen: invoice'); END;--> statement-breakpoint
CREATE VIRTUAL TABLE `found` USING fts5(`kind` UNINDEXED, `entity_id` UNINDEXED, `title` UNINDEXED, `words`, tokenize = 'unicode61 remove_diacritics 2', prefix = '2 3');
--> statement-breakpoint
INSERT INTO `found` (`found`, `rank`) VALUES ('secure-delete', 1);
--> statement-breakpoint
INSERT INTO `found` (`kind`, `entity_id`, `title`, `words`)
	SELECT 'client', `id`, `name`, `name` || ' ' || `address` || ' ' || `email` || ' ' || `phone` || ' ' || `note` FROM `client`
	UNION ALL SELECT 'cloth', `id`, `name`, `name` || ' ' || `fibre` || ' ' || `note` FROM `cloth`
	UNION ALL SELECT 'quote', q.`id`, q.`number` || ' ' || c.`name`, q.`number` || ' ' || c.`name` FROM `quote` AS q JOIN `client` AS c ON c.`id` = q.`customer_id`
	UNION ALL SELECT 'commission', m.`id`, m.`number` || ' ' || c.`name`, m.`number` || ' ' || c.`name` || ' ' || m.`note` FROM `commission` AS m JOIN `client` AS c ON c.`id` = m.`customer_id`;
--> statement-breakpoint
INSERT INTO `search_entry` (`entity_id`, `row`) SELECT `entity_id`, `rowid` FROM `found`;
