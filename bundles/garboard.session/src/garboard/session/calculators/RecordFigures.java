// SPDX-License-Identifier: EPL-2.0
package garboard.session.calculators;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.common.util.Enumerator;

import garboard.model.FieldText;
import garboard.model.Labels;
import garboard.quantity.Kind;
import garboard.quantity.Quantity;
import garboard.session.Field;
import garboard.session.OpenRecord;
import garboard.session.RecordKey;

/** What of a record can be taken into an input of a calculation, and where its results can be put. */
public final class RecordFigures {

    private static final Set<String> SAY_NOTHING = Set.of("the", "of", "at", "to", "in", "and", "or", "from", "with", "for", "by", "on", "is", "it", "its",
        "one", "per", "each", "that", "than", "this", "where", "under", "over", "all", "as", "how", "what", "when", "into", "through");
    private static final int NAME = 4;
    private static final int MEANING = 1;
    private static final int PART = 2;
    private static final int STEM = 4;

    private final OpenRecord open;
    private final Labels labels;
    private final Labels english = Labels.in(Locale.ENGLISH);

    /** @param labels what fields are called in the person's language */
    public RecordFigures(OpenRecord open, Labels labels) {
        this.open = open;
        this.labels = labels;
    }

    /**
     * A field.
     *
     * @param words where it is
     * @param shown what stands there, empty for a field that is empty
     * @param text what an input takes from it
     */
    public record Figure(Field field, String words, String shown, String text) {
    }

    /** {@return the fields that an input can take its value from, those first that are called alike} */
    public List<Figure> toTake(Calculator calculator, CalculatorInput input) {
        return RecordPlaces.of(open.record()).stream().flatMap(field -> text(field, input).map(text -> figure(field, text)).stream())
            .sorted(likeliest(calculator, input.name() + " " + input.meaning(), input.name())).toList();
    }

    /** {@return the fields that can hold a result, those first that are called alike; whether something stands in them or not} */
    public List<Figure> toPut(Calculator calculator, Answering.Line line) {
        Kind<?> kind = line.quantity().orElseThrow().kind();
        return RecordPlaces.of(open.record()).stream().filter(field -> field.attribute().getEAttributeType().getInstanceClass() == kind.type())
            .map(field -> figure(field, "")).sorted(likeliest(calculator, calculator.calculation().title() + " " + line.name(), line.name())).toList();
    }

    /** Puts a result into a field, in one step. @param label what the step is called in "Undo ..." */
    public void put(Answering.Line line, Field field, String label) {
        open.edits().set(field, line.quantity().orElseThrow(), label);
    }

    private Figure figure(Field field, String text) {
        return new Figure(field, new RecordKey(field.anchor(), field.path()).words(labels),
            field.value().map(value -> value instanceof Enumerator choice ? labels.label(choice)
                : FieldText.text(field.attribute().getEAttributeType(), value)).orElse(""), text);
    }

    private static Optional<String> text(Field field, CalculatorInput input) {
        return field.value().flatMap(value -> switch (value) {
            case Quantity<?> quantity -> input.kind().filter(quantity.kind()::equals).map(kind -> quantity.toString());
            case Integer count -> input.isCount() ? Optional.of(count.toString()) : Optional.empty();
            case Enumerator choice -> chosen(choice.getLiteral(), input);
            case String words -> chosen(words, input);
            default -> Optional.empty();
        });
    }

    private static Optional<String> chosen(String words, CalculatorInput input) {
        return input.choices().stream().filter(choice -> choice.equalsIgnoreCase(words.strip())).findFirst();
    }

    // Which field is meant most likely --------------------------------------------------------------------------------

    private Comparator<Figure> likeliest(Calculator calculator, String meaning, String name) {
        Set<String> ofName = words(name);
        Set<String> ofMeaning = words(meaning);
        // Stable: what is equally likely stays in the order of the walk.
        return Comparator.comparingInt(figure -> -likeness(calculator, figure, ofName, ofMeaning));
    }

    private int likeness(Calculator calculator, Figure figure, Set<String> name, Set<String> meaning) {
        String key = figure.field().key();
        Set<String> field = words(english.label(figure.field().attribute()) + " " + figure.field().attribute().getName());
        Set<String> way = words(key);
        int likeness = NAME * common(name, field) + MEANING * common(meaning, field) + MEANING * common(meaning, way);
        return likeness + (key.startsWith(calculator.subject().part()) ? PART : 0);
    }

    private static int common(Set<String> wanted, Collection<String> there) {
        return (int) wanted.stream().filter(word -> there.stream().anyMatch(other -> alike(word, other))).count();
    }

    /** The same word, or two forms of one. */
    private static boolean alike(String one, String other) {
        return one.equals(other) || one.length() >= STEM && other.length() >= STEM && (one.startsWith(other) || other.startsWith(one));
    }

    private static Set<String> words(String text) {
        var words = new HashSet<>(Arrays.asList(text.replaceAll("(?<=[a-z])(?=[A-Z])", " ").toLowerCase(Locale.ROOT).split("[^a-z0-9]+")));
        words.removeAll(SAY_NOTHING);
        words.removeIf(word -> word.length() < 2);
        return words;
    }
}
