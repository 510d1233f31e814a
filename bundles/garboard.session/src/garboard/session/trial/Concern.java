// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.util.Optional;

/**
 * Whether something concerns this installation. What the record does not tell yet counts as if it did, so that nothing is left out for want of
 * an entry.
 *
 * @param holds whether it concerns the installation, as far as is known
 * @param undecided the key of the field that would decide it, where that is not entered
 */
public record Concern(boolean holds, Optional<String> undecided) {

    static final Concern YES = new Concern(true, Optional.empty());
    static final Concern NO = new Concern(false, Optional.empty());

    static Concern of(boolean holds) {
        return holds ? YES : NO;
    }

    /** It does as long as the field with this key is not entered. */
    static Concern until(String key) {
        return new Concern(true, Optional.of(key));
    }
}
