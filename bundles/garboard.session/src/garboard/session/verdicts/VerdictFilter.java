// SPDX-License-Identifier: EPL-2.0
package garboard.session.verdicts;

import java.util.Arrays;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.session.Stop;
import garboard.session.StopStanding;

/**
 * Which verdicts a person wants to see.
 *
 * @param standings the standings to show
 * @param stop the stop to which to keep, or all
 * @param search words that must all stand in the id, the title, the sentence, the basis or the place; in capitals or not
 */
public record VerdictFilter(Set<Standing> standings, Optional<Stop> stop, String search) {

    public VerdictFilter {
        standings = standings.isEmpty() ? Set.of() : Collections.unmodifiableSet(EnumSet.copyOf(standings));
    }

    /** {@return the filter that hides only what does not apply} */
    public static VerdictFilter usual() {
        return new VerdictFilter(EnumSet.complementOf(EnumSet.of(Standing.DOES_NOT_APPLY)), Optional.empty(), "");
    }

    /** {@return the same with a standing shown or hidden} */
    public VerdictFilter with(Standing standing, boolean shown) {
        Set<Standing> fewer = EnumSet.noneOf(Standing.class);
        fewer.addAll(standings);
        if (shown) {
            fewer.add(standing);
        } else {
            fewer.remove(standing);
        }
        return new VerdictFilter(fewer, stop, search);
    }

    public VerdictFilter at(Optional<Stop> only) {
        return new VerdictFilter(standings, only, search);
    }

    public VerdictFilter searching(String words) {
        return new VerdictFilter(standings, stop, words);
    }

    /** {@return the words to look for} */
    private List<String> words() {
        return Arrays.stream(search.toLowerCase(Locale.ROOT).strip().split("\\s+")).filter(word -> !word.isEmpty()).toList();
    }

    /** {@return whether verdicts pass in all but their standing} Made once for a list, so that the search is taken apart once. */
    Predicate<Verdict> besideStanding() {
        List<String> words = words();
        return verdict -> stop.filter(only -> only != StopStanding.stop(verdict)).isEmpty() && (words.isEmpty() || speaksOf(verdict, words));
    }

    private static boolean speaksOf(Verdict verdict, List<String> words) {
        String text = String.join("\n", verdict.check().id(), verdict.check().title(), verdict.sentence(), verdict.subjectLabel(),
            verdict.subjectKey(), verdict.check().basis().toString()).toLowerCase(Locale.ROOT);
        return words.stream().allMatch(text::contains);
    }
}
