PRAGMA foreign_keys = ON;
BEGIN;
PRAGMA user_version = 1;
CREATE TABLE calls (
  "call_id" TEXT NOT NULL,
  "date" TEXT,
  "path" TEXT,
  "state" TEXT,
  "reason" TEXT,
  "faults" INTEGER NOT NULL,
  "replayed" INTEGER NOT NULL CHECK ("replayed" IN (0, 1)),
  "format" INTEGER NOT NULL,
  "entries" INTEGER NOT NULL,
  "started" TEXT,
  "ended" TEXT,
  "technician" TEXT,
  "client" TEXT,
  "site" TEXT,
  "unit" TEXT,
  "model" TEXT,
  "serial" TEXT,
  "machine" TEXT,
  "complaint" TEXT,
  "kind" TEXT,
  "cause" TEXT,
  "result" TEXT,
  "minutes" INTEGER NOT NULL,
  "cost" REAL,
  "missing" TEXT NOT NULL,
  "unsafe" TEXT NOT NULL,
  "ohms" TEXT NOT NULL,
  "redacted" INTEGER NOT NULL CHECK ("redacted" IN (0, 1)),
  "log_sha256" TEXT,
  PRIMARY KEY (call_id)
) STRICT;
CREATE TABLE readings (
  "call_id" TEXT NOT NULL,
  "date" TEXT,
  "n" INTEGER NOT NULL,
  "entry" INTEGER NOT NULL,
  "at" TEXT,
  "kind" TEXT,
  "machine" TEXT,
  "point_a" TEXT,
  "point_b" TEXT,
  "value" REAL,
  "unit" TEXT,
  "uncertainty" REAL,
  "over" INTEGER NOT NULL CHECK ("over" IN (0, 1)),
  "shown" TEXT,
  "condition" TEXT,
  "struck" TEXT,
  PRIMARY KEY (call_id, n),
  FOREIGN KEY (call_id) REFERENCES calls (call_id)
) STRICT;
CREATE TABLE verdicts (
  "call_id" TEXT NOT NULL,
  "date" TEXT,
  "n" INTEGER NOT NULL,
  "subject" TEXT,
  "verdict" TEXT,
  "reason" TEXT,
  "limit_text" TEXT,
  "margin" TEXT,
  "source" TEXT,
  "also" TEXT NOT NULL,
  "entries" TEXT NOT NULL,
  PRIMARY KEY (call_id, n),
  FOREIGN KEY (call_id) REFERENCES calls (call_id)
) STRICT;
CREATE TABLE sums (
  "call_id" TEXT NOT NULL,
  "date" TEXT,
  "n" INTEGER NOT NULL,
  "entry" INTEGER NOT NULL,
  "expression" TEXT,
  "shown" TEXT,
  "meaning" TEXT,
  "value" REAL,
  "unit" TEXT,
  "uncertainty" REAL,
  "met" TEXT,
  "struck" TEXT,
  PRIMARY KEY (call_id, n),
  FOREIGN KEY (call_id) REFERENCES calls (call_id)
) STRICT;
CREATE TABLE parts (
  "call_id" TEXT NOT NULL,
  "date" TEXT,
  "n" INTEGER NOT NULL,
  "entry" INTEGER NOT NULL,
  "name" TEXT,
  "count" REAL,
  "price" REAL,
  "struck" TEXT,
  PRIMARY KEY (call_id, n),
  FOREIGN KEY (call_id) REFERENCES calls (call_id)
) STRICT;
CREATE TABLE entries (
  "call_id" TEXT NOT NULL,
  "date" TEXT,
  "n" INTEGER NOT NULL,
  "entry" INTEGER NOT NULL,
  "at" TEXT,
  "kind" TEXT,
  "line" TEXT,
  "reply" TEXT NOT NULL,
  "struck" TEXT,
  PRIMARY KEY (call_id, n),
  FOREIGN KEY (call_id) REFERENCES calls (call_id)
) STRICT;
CREATE INDEX calls_by_date ON calls (date);
CREATE INDEX calls_by_serial ON calls (serial);
CREATE TABLE schema_columns ("table" TEXT NOT NULL, "column" TEXT NOT NULL, type TEXT NOT NULL, unit TEXT NOT NULL, help TEXT NOT NULL, PRIMARY KEY ("table", "column")) STRICT;
INSERT INTO schema_columns VALUES ('calls', 'call_id', 'text', '', 'names the call in every table');
INSERT INTO schema_columns VALUES ('calls', 'date', 'date', '', 'day on which the call began, by its own clock');
INSERT INTO schema_columns VALUES ('calls', 'path', 'text', '', 'file below the scanned folder');
INSERT INTO schema_columns VALUES ('calls', 'state', 'text', '', 'how far the file is believed: trusted, changed or open');
INSERT INTO schema_columns VALUES ('calls', 'reason', 'text', '', 'why it is not trusted');
INSERT INTO schema_columns VALUES ('calls', 'faults', 'integer', '1', 'differences that the replay found');
INSERT INTO schema_columns VALUES ('calls', 'replayed', 'boolean', '', 'the typed lines were applied again; the other tables have rows only for such calls');
INSERT INTO schema_columns VALUES ('calls', 'format', 'integer', '1', 'version of the notebook''s format');
INSERT INTO schema_columns VALUES ('calls', 'entries', 'integer', '1', 'lines in the log');
INSERT INTO schema_columns VALUES ('calls', 'started', 'time', '', 'time of the first entry, ISO 8601');
INSERT INTO schema_columns VALUES ('calls', 'ended', 'time', '', 'time of the last entry, ISO 8601');
INSERT INTO schema_columns VALUES ('calls', 'technician', 'text', '', 'who did the work');
INSERT INTO schema_columns VALUES ('calls', 'client', 'text', '', 'whose appliance it is');
INSERT INTO schema_columns VALUES ('calls', 'site', 'text', '', 'where it stands');
INSERT INTO schema_columns VALUES ('calls', 'unit', 'text', '', 'what appliance it is');
INSERT INTO schema_columns VALUES ('calls', 'model', 'text', '', 'the appliance''s model');
INSERT INTO schema_columns VALUES ('calls', 'serial', 'text', '', 'the appliance''s serial number');
INSERT INTO schema_columns VALUES ('calls', 'machine', 'text', '', 'model of the machine judged, the compressor as a rule');
INSERT INTO schema_columns VALUES ('calls', 'complaint', 'text', '', 'the complaint in the customer''s words');
INSERT INTO schema_columns VALUES ('calls', 'kind', 'text', '', 'code of the complaint');
INSERT INTO schema_columns VALUES ('calls', 'cause', 'text', '', 'the cause found, an inference');
INSERT INTO schema_columns VALUES ('calls', 'result', 'text', '', 'proved, not proved, unsafe or no repair');
INSERT INTO schema_columns VALUES ('calls', 'minutes', 'integer', 'min', 'from the first entry to the last');
INSERT INTO schema_columns VALUES ('calls', 'cost', 'real', '', 'of the parts, in the notebook''s own currency');
INSERT INTO schema_columns VALUES ('calls', 'missing', 'list', '', 'what a complete record would still hold');
INSERT INTO schema_columns VALUES ('calls', 'unsafe', 'list', '', 'what was left unsafe');
INSERT INTO schema_columns VALUES ('calls', 'ohms', 'list', '', 'settled winding resistances in Ohm, as role-role value');
INSERT INTO schema_columns VALUES ('calls', 'redacted', 'boolean', '', 'personal fields were taken out');
INSERT INTO schema_columns VALUES ('calls', 'log_sha256', 'text', '', 'SHA-256 of the log when closed');
INSERT INTO schema_columns VALUES ('readings', 'call_id', 'text', '', 'names the call in every table');
INSERT INTO schema_columns VALUES ('readings', 'date', 'date', '', 'day on which the call began, by its own clock');
INSERT INTO schema_columns VALUES ('readings', 'n', 'integer', '', 'counts the rows of one call from 1');
INSERT INTO schema_columns VALUES ('readings', 'entry', 'integer', '1', 'number of the log''s entry');
INSERT INTO schema_columns VALUES ('readings', 'at', 'time', '', 'time of the entry, ISO 8601; entry numbers give the order, not times');
INSERT INTO schema_columns VALUES ('readings', 'kind', 'text', '', 'the command word: ohm, volt, amp, mfd, temp, watt or psi');
INSERT INTO schema_columns VALUES ('readings', 'machine', 'text', '', 'whose pins were read');
INSERT INTO schema_columns VALUES ('readings', 'point_a', 'text', '', 'pin or place');
INSERT INTO schema_columns VALUES ('readings', 'point_b', 'text', '', 'the other pin');
INSERT INTO schema_columns VALUES ('readings', 'value', 'real', 'see unit', 'absent when it was over the meter''s range');
INSERT INTO schema_columns VALUES ('readings', 'unit', 'text', '', 'UCUM code of value and uncertainty');
INSERT INTO schema_columns VALUES ('readings', 'uncertainty', 'real', 'see unit', 'standard uncertainty from the meter''s limits');
INSERT INTO schema_columns VALUES ('readings', 'over', 'boolean', '', 'over the meter''s range, an open circuit as a rule');
INSERT INTO schema_columns VALUES ('readings', 'shown', 'text', '', 'value as shown, with unit');
INSERT INTO schema_columns VALUES ('readings', 'condition', 'text', '', 'in which it was taken');
INSERT INTO schema_columns VALUES ('readings', 'struck', 'text', '', 'the reason, when it no longer counts');
INSERT INTO schema_columns VALUES ('verdicts', 'call_id', 'text', '', 'names the call in every table');
INSERT INTO schema_columns VALUES ('verdicts', 'date', 'date', '', 'day on which the call began, by its own clock');
INSERT INTO schema_columns VALUES ('verdicts', 'n', 'integer', '', 'counts the rows of one call from 1');
INSERT INTO schema_columns VALUES ('verdicts', 'subject', 'text', '', 'what is judged');
INSERT INTO schema_columns VALUES ('verdicts', 'verdict', 'text', '', 'the judgement in a word');
INSERT INTO schema_columns VALUES ('verdicts', 'reason', 'text', '', 'the judgement in a sentence');
INSERT INTO schema_columns VALUES ('verdicts', 'limit_text', 'text', '', 'the limit it was held against');
INSERT INTO schema_columns VALUES ('verdicts', 'margin', 'text', '', 'how far from the limit, in units of the meter''s doubt');
INSERT INTO schema_columns VALUES ('verdicts', 'source', 'text', '', 'where the limit comes from');
INSERT INTO schema_columns VALUES ('verdicts', 'also', 'list', '', 'further remarks');
INSERT INTO schema_columns VALUES ('verdicts', 'entries', 'list', '', 'numbers of the entries it rests on');
INSERT INTO schema_columns VALUES ('sums', 'call_id', 'text', '', 'names the call in every table');
INSERT INTO schema_columns VALUES ('sums', 'date', 'date', '', 'day on which the call began, by its own clock');
INSERT INTO schema_columns VALUES ('sums', 'n', 'integer', '', 'counts the rows of one call from 1');
INSERT INTO schema_columns VALUES ('sums', 'entry', 'integer', '1', 'number of the log''s entry');
INSERT INTO schema_columns VALUES ('sums', 'expression', 'text', '', 'as typed');
INSERT INTO schema_columns VALUES ('sums', 'shown', 'text', '', 'the result as shown');
INSERT INTO schema_columns VALUES ('sums', 'meaning', 'text', '', 'what it was for');
INSERT INTO schema_columns VALUES ('sums', 'value', 'real', 'see unit', 'absent for an expectation');
INSERT INTO schema_columns VALUES ('sums', 'unit', 'text', '', 'UCUM code of value and uncertainty');
INSERT INTO schema_columns VALUES ('sums', 'uncertainty', 'real', 'see unit', 'standard uncertainty, 0 when exact');
INSERT INTO schema_columns VALUES ('sums', 'met', 'text', '', 'for an expectation: met or not met');
INSERT INTO schema_columns VALUES ('sums', 'struck', 'text', '', 'the reason, when it no longer counts');
INSERT INTO schema_columns VALUES ('parts', 'call_id', 'text', '', 'names the call in every table');
INSERT INTO schema_columns VALUES ('parts', 'date', 'date', '', 'day on which the call began, by its own clock');
INSERT INTO schema_columns VALUES ('parts', 'n', 'integer', '', 'counts the rows of one call from 1');
INSERT INTO schema_columns VALUES ('parts', 'entry', 'integer', '1', 'number of the log''s entry');
INSERT INTO schema_columns VALUES ('parts', 'name', 'text', '', 'the part');
INSERT INTO schema_columns VALUES ('parts', 'count', 'real', '1', 'how many');
INSERT INTO schema_columns VALUES ('parts', 'price', 'real', '', 'of one, in the notebook''s own currency');
INSERT INTO schema_columns VALUES ('parts', 'struck', 'text', '', 'the reason, when it no longer counts');
INSERT INTO schema_columns VALUES ('entries', 'call_id', 'text', '', 'names the call in every table');
INSERT INTO schema_columns VALUES ('entries', 'date', 'date', '', 'day on which the call began, by its own clock');
INSERT INTO schema_columns VALUES ('entries', 'n', 'integer', '', 'counts the rows of one call from 1');
INSERT INTO schema_columns VALUES ('entries', 'entry', 'integer', '1', 'number of the log''s entry');
INSERT INTO schema_columns VALUES ('entries', 'at', 'time', '', 'time of the entry, ISO 8601');
INSERT INTO schema_columns VALUES ('entries', 'kind', 'text', '', 'the command word, or sum');
INSERT INTO schema_columns VALUES ('entries', 'line', 'text', '', 'as typed');
INSERT INTO schema_columns VALUES ('entries', 'reply', 'list', '', 'the reply that was given, line by line');
INSERT INTO schema_columns VALUES ('entries', 'struck', 'text', '', 'the reason, when it was struck');
INSERT INTO calls VALUES ('a1', '2026-03-02', 'a.md', 'trusted', NULL, 0, 1, 1, 3, '2026-03-02T09:00:00+01:00', '2026-03-02T10:10:00+01:00', 'Tilda Tester', 'Petra Placeholder', '12 Sample Street', 'chest freezer', 'INVENTED-300', 'DEMO-1', 'MOCK-C7', 'clicks and does not cool', 'no-start', 'start device or relay failed', 'proved', 70, 2.45e+01, '', '', 'common-run 4.6', 0, NULL);
INSERT INTO readings VALUES ('a1', '2026-03-02', 1, 1, '2026-03-02T09:00:00+01:00', 'ohm', 'compressor', 'A', 'B', 4.6e+00, 'Ohm', 3.5e-02, 0, '4.6 Ω', 'cold', NULL);
INSERT INTO readings VALUES ('a1', '2026-03-02', 2, 1, '2026-03-02T09:00:00+01:00', 'ohm', 'compressor', 'A', 'case', NULL, 'Ohm', NULL, 1, 'over range', NULL, NULL);
INSERT INTO readings VALUES ('a1', '2026-03-02', 3, 2, '2026-03-02T09:00:00+01:00', 'temp', NULL, 'freezer', NULL, -1.85e+01, 'Cel', 6e-01, 0, '-18.5 °C', NULL, '=wrong, "place"');
INSERT INTO verdicts VALUES ('a1', '2026-03-02', 1, 'windings', 'good', 'they add up', 'within ±2 %', '3 × the meter''s limit', 'common practice', 'cold; dry', '1; 2');
INSERT INTO sums VALUES ('a1', '2026-03-02', 1, 2, '-2 * 3', '-6', NULL, -6e+00, '1', 0e+00, NULL, NULL);
INSERT INTO sums VALUES ('a1', '2026-03-02', 2, 3, 'i < 2A', 'met', 'amps below plate', NULL, NULL, NULL, 'met', NULL);
INSERT INTO parts VALUES ('a1', '2026-03-02', 1, 3, 'start device', 1e+00, 2.45e+01, NULL);
INSERT INTO parts VALUES ('a1', '2026-03-02', 2, 3, 'solder', 5e-01, NULL, NULL);
INSERT INTO entries VALUES ('a1', '2026-03-02', 1, 1, '2026-03-02T09:00:00+01:00', 'ohm', 'ohm A B 4.6, A case OL', 'one; two', NULL);
INSERT INTO calls VALUES ('b2', '2026-04-01', 'b.md', 'trusted', NULL, 0, 0, 1, 3, '2026-04-01T09:00:00+01:00', '2026-04-01T10:10:00+01:00', 'Max Muster', 'Petra Placeholder', '12 Sample Street', 'chest freezer', 'INVENTED-300', 'demo-1 ', 'MOCK-C7', 'clicks and does not cool', 'no-start', NULL, 'not proved', 70, 4.9e+01, 'proof: the start seen', '', '', 0, NULL);
INSERT INTO calls VALUES ('c3', '2026-05-02', 'c.md', 'changed', 'the log is not what was closed', 0, 0, 1, 3, '2026-05-02T09:00:00+01:00', '2026-05-02T10:10:00+01:00', 'Tilda Tester', '=HYPERLINK("x")', '12 Sample Street', 'chest freezer', 'UNREAL-12', 'DEMO-1', 'MOCK-C7', 'clicks and does not cool', 'no-start', 'winding grounded to the case', 'unsafe', 70, 0e+00, '', 'winding to case: grounded | really', '', 0, NULL);
INSERT INTO calls VALUES ('d4', NULL, 'd.md', 'open', 'never closed', 0, 0, 1, 0, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, 0, 0e+00, '', '', '', 0, NULL);
COMMIT;
