// SPDX-License-Identifier: EPL-2.0
package garboard.session.calculators;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import garboard.physics.calculation.Calculation;
import garboard.physics.calculation.Parameter;

/** All named calculations, by subject, and those among them that a person looks for. */
public final class CalculatorList {

    private final List<Entry> entries;

    /** A calculation under its subject. */
    public record Entry(Subject subject, Calculation calculation) {
    }

    private CalculatorList(List<Entry> entries) {
        this.entries = entries;
    }

    /** {@return all of them} */
    public static CalculatorList all() {
        return new CalculatorList(Subject.stream()
            .flatMap(subject -> subject.calculations().stream().map(calculation -> new Entry(subject, calculation))).toList());
    }

    public List<Entry> entries() {
        return entries;
    }

    /** {@return the calculation of a name} */
    public Optional<Entry> find(String name) {
        return entries.stream().filter(entry -> entry.calculation().name().equals(name)).findFirst();
    }

    /**
     * {@return those in which every word that is looked for stands, in capitals or not; all for no word} Those with all words in the title
     * come first within their subject.
     *
     * @param called what a subject is called in the person's language
     */
    public List<Entry> matching(String search, Function<Subject, String> called) {
        List<String> words = Arrays.stream(search.toLowerCase(Locale.ROOT).strip().split("\\s+")).filter(word -> !word.isEmpty()).toList();
        if (words.isEmpty()) {
            return entries;
        }
        return Subject.stream().flatMap(subject -> {
            List<Entry> found = entries.stream().filter(entry -> entry.subject() == subject && contains(text(entry, called), words)).toList();
            return Stream.concat(found.stream().filter(entry -> contains(title(entry), words)), found.stream().filter(entry -> !contains(title(entry), words)));
        }).toList();
    }

    private static boolean contains(String text, List<String> words) {
        return words.stream().allMatch(text::contains);
    }

    private static String title(Entry entry) {
        return entry.calculation().title().toLowerCase(Locale.ROOT);
    }

    private static String text(Entry entry, Function<Subject, String> called) {
        Calculation calculation = entry.calculation();
        return String.join(" ", calculation.name(), calculation.title(), calculation.explanation(), calculation.source().citation(),
            called.apply(entry.subject()), calculation.parameters().stream().map(Parameter::name).collect(Collectors.joining(" ")))
            .toLowerCase(Locale.ROOT);
    }
}
