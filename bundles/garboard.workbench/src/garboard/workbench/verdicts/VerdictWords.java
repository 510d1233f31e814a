// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.verdicts;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EAttribute;

import garboard.checks.Basis;
import garboard.checks.Limit;
import garboard.checks.Margin;
import garboard.checks.Remedy;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.FieldText;
import garboard.model.GarboardPackage.Literals;
import garboard.model.RecordPath;
import garboard.quantity.Quantity;
import garboard.report.Figures;
import garboard.session.Field;
import garboard.session.OpenRecord;
import garboard.session.RecordKey;
import garboard.session.verdicts.Inputs;
import garboard.workbench.Desk;
import garboard.workbench.text.Texts;

/** A verdict in words of the window's language and figures of the person's units. What the checks say themselves is English. */
final class VerdictWords {

    /** Between the steps of a place in words. */
    private static final String STEP = " › ";

    private final Desk desk;
    private final OpenRecord record;
    private final Texts.Of texts;

    VerdictWords(Desk desk, OpenRecord record) {
        this.desk = desk;
        this.record = record;
        this.texts = desk.texts(VerdictWords.class);
    }

    String standing(Standing standing) {
        return texts.get("standing." + standing.name());
    }

    String gravity(Verdict verdict) {
        return texts.get("gravity." + verdict.check().gravity().name());
    }

    /** {@return what the check says, as a sentence of its own} */
    String sentence(Verdict verdict) {
        String said = verdict.sentence();
        return said.isEmpty() ? said : said.substring(0, 1).toUpperCase(Locale.ROOT) + said.substring(1) + (said.endsWith(".") ? "" : ".");
    }

    /** {@return what the verdict is on; for a part that is not there yet, what would be entered} */
    String subject(Verdict verdict) {
        String key = verdict.subjectKey().isEmpty() ? verdict.missing().stream().findFirst().map(missing -> missing.key()).orElse("") : verdict.subjectKey();
        return place(key);
    }

    /** {@return a place of the record in words} */
    String place(String key) {
        return RecordKey.of(record.record(), key).map(place -> place.words(desk.labels())).orElse(key);
    }

    /** {@return a place in words, without what it has in common with the subject of a verdict} */
    String placeBeside(Verdict verdict, String key) {
        String words = place(key);
        String subject = place(verdict.subjectKey());
        return words.startsWith(subject + STEP) ? words.substring(subject.length() + STEP.length()) : words;
    }

    /**
     * {@return places by their keys, each with the shortest words that tell it from the others} The three measures of a point are one
     * place.
     */
    Map<String, String> shortPlaces(List<String> keys) {
        var places = new LinkedHashMap<String, String>();
        Set<String> points = new HashSet<>();
        for (String key : keys) {
            String[] steps = place(key).split(STEP);
            boolean ofPoint = isOfPoint(key);
            if (!ofPoint || points.add(key.substring(0, key.lastIndexOf('.')))) {
                places.put(key, steps[Math.max(0, steps.length - (ofPoint ? 2 : 1))]);
            }
        }
        List<String> all = List.copyOf(places.values());
        places.replaceAll((key, words) -> Collections.frequency(all, words) > 1 ? place(key) : words);
        return places;
    }

    private boolean isOfPoint(String key) {
        return RecordKey.of(record.record(), key).flatMap(RecordKey::field).filter(field -> field.attribute().getEContainingClass() == Literals.POINT).isPresent();
    }

    /** {@return what was measured: as it was entered, or in the person's units when it was computed} */
    Optional<String> measured(Verdict verdict) {
        return verdict.measured().map(quantity -> Inputs.isEntered(record, verdict, quantity) ? asEntered(quantity) : figure(quantity) + accuracy(quantity));
    }

    /** {@return the limit and whose it is} */
    Optional<String> limit(Verdict verdict) {
        return verdict.limit().map(limit -> texts.get("limit.whose", limit.fromMaker() ? asEntered(limit.value()) : figure(limit.value()),
            texts.get(whose(verdict, limit), limit.origin())));
    }

    /** As a person gave it, and what that is in the person's units when it was given in others. */
    private String asEntered(Quantity<?> quantity) {
        String shown = figure(quantity);
        String given = quantity.toString();
        return given.replace(" ", "").startsWith(shown.replace(" ", "")) ? given : texts.get("figure.converted", given, shown);
    }

    private static String whose(Verdict verdict, Limit<?> limit) {
        return limit.fromMaker() ? "limit.maker" : verdict.check().basis().isRegulation() ? "limit.regulation" : "limit.other";
    }

    /** {@return the signed distance from the limit, in per cent too where that says something} */
    Optional<String> margin(Verdict verdict) {
        return verdict.margin().map(margin -> distance(margin) + (margin.perCent().isPresent()
            ? " " + texts.get("margin.perCent", sign(margin.perCent().getAsDouble(), String.format(Locale.ROOT, "%.0f", Math.abs(margin.perCent().getAsDouble()))))
            : ""));
    }

    private String distance(Margin margin) {
        String shown = figure(margin.distance());
        return sign(margin.distance().si(), shown.startsWith("−") ? shown.substring(1) : shown);
    }

    private static String sign(double number, String size) {
        return (number < 0 ? "−" : "+") + size;
    }

    private String figure(Quantity<?> quantity) {
        return figures().text(quantity).replace("-", "−");
    }

    /** The half width of what the instrument leaves open, in the unit of the figure, to two digits. */
    private String accuracy(Quantity<?> quantity) {
        if (quantity.accuracySi().isEmpty()) {
            return "";
        }
        String unit = figures().unit(quantity);
        double half = quantity.kind().of(quantity.si() + quantity.accuracySi().getAsDouble()).in(unit) - quantity.in(unit);
        String sign = Figures.sign(unit);
        return " ±" + new BigDecimal(half).round(new MathContext(2)).stripTrailingZeros().toPlainString() + (sign.isEmpty() ? "" : " " + sign);
    }

    private Figures figures() {
        return Figures.in(desk.settings().units());
    }

    /** {@return measured and limit side by side in the person's units, for a line of a list} */
    Optional<String> figures(Verdict verdict) {
        return verdict.measured().isPresent() && verdict.limit().isPresent()
            ? Optional.of(texts.get("row.figures", figure(verdict.measured().get()), figure(verdict.limit().get().value()))) : Optional.empty();
    }

    /** {@return where the rule comes from and how sure we are of its text} */
    String basis(Verdict verdict) {
        Basis basis = verdict.check().basis();
        if (basis.kind() == Basis.Kind.COMMON_PRACTICE) {
            return texts.get("basis.commonPractice");
        }
        return texts.get("basis.of", basis.citation(), texts.get("kind." + basis.kind().name()), texts.get("status." + basis.status().name()));
    }

    /** {@return each change of a remedy: the field, what stands there and what would} */
    List<String> changes(Verdict verdict) {
        var lines = new ArrayList<String>();
        for (Remedy.Change change : verdict.remedy().map(Remedy::changes).orElse(List.of())) {
            String place = placeBeside(verdict, RecordPath.key(change.target(), change.feature()));
            lines.add(change.feature() instanceof EAttribute attribute
                ? texts.get("change", place, now(Field.of(change.target(), attribute)), text(attribute, change.value())) : place);
        }
        return lines;
    }

    private String now(Field field) {
        return record.edits().unread(field).or(() -> field.value().map(value -> text(field.attribute(), value))).orElseGet(() -> texts.get("change.empty"));
    }

    private String text(EAttribute attribute, Object value) {
        return FieldText.text(attribute.getEAttributeType(), value, desk.labels());
    }
}
