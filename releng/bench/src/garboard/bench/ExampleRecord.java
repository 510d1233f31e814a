// SPDX-License-Identifier: EPL-2.0
package garboard.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;

import garboard.checks.Catalogue;
import garboard.checks.Evaluation;
import garboard.checks.Evaluator;
import garboard.examples.Examples;
import garboard.model.io.RecordFile;
import garboard.model.io.RecordReadException;
import garboard.practice.FederalGasolineCraft;
import garboard.practice.HandbookPractice;
import garboard.practice.SmallCraftStandards;
import garboard.practice.SmallPassengerVessels;
import garboard.quantity.UnitSystem;
import garboard.report.Paper;
import garboard.report.Report;
import garboard.report.ReportOptions;
import garboard.report.Reports;

/**
 * One of the example records, read.
 *
 * @param bytes its file
 * @param file the record
 */
record ExampleRecord(byte[] bytes, RecordFile file) {

    /** A day after those in the records, always the same one. */
    static final LocalDate DAY = LocalDate.of(2026, 11, 1);

    static ExampleRecord named(String name) {
        try {
            byte[] bytes = bytes(name);
            return new ExampleRecord(bytes, RecordFile.read(new java.io.ByteArrayInputStream(bytes), name));
        } catch (RecordReadException wrong) {
            throw new IllegalStateException(wrong);
        }
    }

    static byte[] bytes(String name) {
        try (InputStream in = Examples.find(name).orElseThrow().open()) {
            return in.readAllBytes();
        } catch (IOException wrong) {
            throw new UncheckedIOException(wrong);
        }
    }

    /** The practices that the product comes with, in the order that its extension point gives them. */
    static Evaluator evaluator() {
        return new Evaluator(
            Catalogue.of(new HandbookPractice(), new SmallCraftStandards(), new FederalGasolineCraft(), new SmallPassengerVessels()));
    }

    Report report() {
        Evaluation evaluation = evaluator().evaluate(file.record(), DAY);
        return Reports.compose(file.record(), evaluation,
            new ReportOptions(UnitSystem.SI, Paper.A4, ZonedDateTime.of(DAY.atTime(12, 0), ZoneOffset.UTC), "0"));
    }
}
