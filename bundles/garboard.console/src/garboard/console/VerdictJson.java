// SPDX-License-Identifier: EPL-2.0
package garboard.console;

import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.PrintStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

import com.google.gson.stream.JsonWriter;

import garboard.checks.Basis;
import garboard.checks.Catalogue;
import garboard.checks.Evaluation;
import garboard.checks.Limit;
import garboard.checks.Margin;
import garboard.checks.Missing;
import garboard.checks.Remedy;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.model.RecordPath;
import garboard.quantity.Quantity;

/**
 * Verdicts as JSON. The form is documented in README.md and stable: fields are added, never renamed or removed, without a new
 * format number.
 */
final class VerdictJson {

    static final int FORMAT = 1;

    private final PrintStream out;

    VerdictJson(PrintStream out) {
        this.out = out;
    }

    void write(CommissioningRecord record, Evaluation evaluation, Catalogue catalogue) {
        try {
            var json = new JsonWriter(new OutputStreamWriter(out, StandardCharsets.UTF_8));
            json.setIndent("  ");
            json.beginObject();
            json.name("format").value(FORMAT);
            json.name("record").beginObject();
            json.name("number").value(record.getRecordNumber());
            json.name("title").value(record.getTitle());
            json.name("vessel").value(record.getVessel() == null ? null : record.getVessel().getName());
            json.name("serialNumber").value(record.getGeneratorSet() == null ? null : record.getGeneratorSet().getSerialNumber());
            json.endObject();
            json.name("day").value(evaluation.day().toString());
            json.name("outcome").value(Outcome.sentence(evaluation));
            json.name("counts").beginObject();
            for (Standing standing : Standing.values()) {
                json.name(word(standing.label())).value(evaluation.count(standing));
            }
            json.endObject();
            json.name("practicesNotAtHand").beginArray();
            for (String practice : evaluation.practicesNotAtHand()) {
                json.value(practice);
            }
            json.endArray();
            json.name("verdicts").beginArray();
            for (Verdict verdict : evaluation.worstFirst()) {
                write(json, verdict, catalogue);
            }
            json.endArray();
            json.endObject();
            json.flush();
            out.println();
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }

    private static void write(JsonWriter json, Verdict verdict, Catalogue catalogue) throws IOException {
        json.beginObject();
        json.name("check").value(verdict.check().id());
        json.name("title").value(verdict.check().title());
        json.name("practice").value(catalogue.practiceOf(verdict.check()).id());
        json.name("subject").beginObject();
        json.name("field").value(verdict.subjectKey());
        json.name("label").value(verdict.subjectLabel());
        json.endObject();
        json.name("verdict").value(word(verdict.standing().label()));
        json.name("sentence").value(verdict.sentence());
        json.name("gravity").value(word(verdict.check().gravity().label()));
        if (verdict.measured().isPresent()) {
            quantity(json.name("measured"), verdict.measured().get());
        }
        if (verdict.limit().isPresent()) {
            limit(json.name("limit"), verdict.limit().get());
        }
        if (verdict.margin().isPresent()) {
            margin(json.name("margin"), verdict.margin().get());
        }
        basis(json.name("basis"), verdict.check().basis());
        if (verdict.remedy().isPresent()) {
            remedy(json.name("remedy"), verdict.remedy().get());
        }
        json.name("missing").beginArray();
        for (Missing missing : verdict.missing()) {
            json.beginObject().name("field").value(missing.key()).name("label").value(missing.label()).endObject();
        }
        json.endArray();
        if (verdict.acceptance().isPresent()) {
            json.name("acceptance").value(verdict.acceptance().get());
        }
        json.endObject();
    }

    private static void quantity(JsonWriter json, Quantity<?> quantity) throws IOException {
        json.beginObject();
        valueAndUnit(json, quantity);
        json.endObject();
    }

    private static void valueAndUnit(JsonWriter json, Quantity<?> quantity) throws IOException {
        String unit = quantity.kind().displayUnit(garboard.quantity.UnitSystem.SI);
        json.name("value").value(rounded(quantity.in(unit)));
        json.name("unit").value(unit);
    }

    /** Ten significant digits: more than any gauge has, fewer than binary noise needs. */
    private static double rounded(double value) {
        return value == 0 ? 0
                : new java.math.BigDecimal(value).round(new java.math.MathContext(10)).doubleValue();
    }

    private static void limit(JsonWriter json, Limit<?> limit) throws IOException {
        json.beginObject();
        valueAndUnit(json, limit.value());
        json.name("origin").value(limit.origin());
        json.name("fromMaker").value(limit.fromMaker());
        json.endObject();
    }

    private static void margin(JsonWriter json, Margin margin) throws IOException {
        json.beginObject();
        valueAndUnit(json, margin.distance());
        if (margin.perCent().isPresent()) {
            json.name("perCent").value(rounded(margin.perCent().getAsDouble()));
        }
        json.endObject();
    }

    static void basis(JsonWriter json, Basis basis) throws IOException {
        json.beginObject();
        json.name("kind").value(word(basis.kind().label()));
        json.name("citation").value(basis.citation());
        json.name("status").value(word(basis.status().label()));
        if (!basis.otherFigures().isBlank()) {
            json.name("otherFigures").value(basis.otherFigures());
        }
        json.endObject();
    }

    private static void remedy(JsonWriter json, Remedy remedy) throws IOException {
        json.beginObject();
        json.name("text").value(remedy.text());
        json.name("changes").beginArray();
        for (Remedy.Change change : remedy.changes()) {
            json.beginObject();
            json.name("field").value(RecordPath.key(change.target(), change.feature()));
            json.name("value").value(change.value().toString());
            json.endObject();
        }
        json.endArray();
        json.endObject();
    }

    /** Labels as JSON words: small letters with hyphens. */
    static String word(String label) {
        return label.toLowerCase(Locale.ROOT).replace(' ', '-');
    }
}
