// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.verdicts;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

import garboard.session.verdicts.VerdictChange;
import garboard.session.verdicts.VerdictKey;

/** Links of a text: to places of the record by their keys, to verdicts by check and place. */
final class VerdictLinks {

    private static final String VERDICT = "verdict:";
    private static final char ON = '@';

    private VerdictLinks() {
    }

    /** {@return links to places, one after the other} */
    static String list(Map<String, String> wordsByKey) {
        return wordsByKey.entrySet().stream().map(place -> link(place.getKey(), place.getValue())).collect(Collectors.joining(", "));
    }

    /** {@return links to verdicts by the ids of their checks} */
    static String verdicts(List<VerdictChange> changes) {
        return changes.stream().map(change -> link(VERDICT + change.key().check() + ON + change.key().subject(), change.key().check()))
            .collect(Collectors.joining(", "));
    }

    /** {@return the verdict that a link leads to} */
    static Optional<VerdictKey> verdict(String target) {
        if (!target.startsWith(VERDICT)) {
            return Optional.empty();
        }
        int on = target.indexOf(ON);
        return Optional.of(new VerdictKey(target.substring(VERDICT.length(), on), target.substring(on + 1)));
    }

    /** What a person called something must not become a link. */
    private static String link(String target, String words) {
        return "<a href=\"" + target.replace("\"", "") + "\">" + words.replace('<', '‹').replace('>', '›').replace("&", "&&") + "</a>";
    }
}
