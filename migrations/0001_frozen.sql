-- What has been sent, printed or written down as history is never altered; a measurement set neither, once a
-- quote rests on it.
CREATE TRIGGER `quote_kept` BEFORE UPDATE ON `quote` BEGIN SELECT RAISE(ABORT, 'frozen: quote'); END;--> statement-breakpoint
CREATE TRIGGER `quote_not_deleted` BEFORE DELETE ON `quote` BEGIN SELECT RAISE(ABORT, 'frozen: quote'); END;--> statement-breakpoint
CREATE TRIGGER `quote_garment_kept` BEFORE UPDATE ON `quote_garment` BEGIN SELECT RAISE(ABORT, 'frozen: quote_garment'); END;--> statement-breakpoint
CREATE TRIGGER `quote_garment_not_deleted` BEFORE DELETE ON `quote_garment` BEGIN SELECT RAISE(ABORT, 'frozen: quote_garment'); END;--> statement-breakpoint
CREATE TRIGGER `document_kept` BEFORE UPDATE ON `document` BEGIN SELECT RAISE(ABORT, 'frozen: document'); END;--> statement-breakpoint
CREATE TRIGGER `document_not_deleted` BEFORE DELETE ON `document` BEGIN SELECT RAISE(ABORT, 'frozen: document'); END;--> statement-breakpoint
CREATE TRIGGER `change_kept` BEFORE UPDATE ON `change` BEGIN SELECT RAISE(ABORT, 'frozen: change'); END;--> statement-breakpoint
CREATE TRIGGER `change_not_deleted` BEFORE DELETE ON `change` BEGIN SELECT RAISE(ABORT, 'frozen: change'); END;--> statement-breakpoint
CREATE TRIGGER `measurement_set_kept` BEFORE UPDATE ON `measurement_set` WHEN OLD.`used_at` IS NOT NULL
BEGIN SELECT RAISE(ABORT, 'frozen: measurement_set'); END;--> statement-breakpoint
CREATE TRIGGER `measurement_set_not_deleted` BEFORE DELETE ON `measurement_set` WHEN OLD.`used_at` IS NOT NULL
BEGIN SELECT RAISE(ABORT, 'frozen: measurement_set'); END;
