// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import java.util.Locale;

/** Names of the model taken apart into words, for want of a label. */
final class Camel {

    private Camel() {
    }

    /** {@return {@code Siphon break} for SiphonBreak and siphonBreak, {@code Sailing monohull} for SAILING_MONOHULL} */
    static String words(String name) {
        String words = name.chars().anyMatch(Character::isLowerCase)
            ? name.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ") : name.replace('_', ' ');
        String small = words.toLowerCase(Locale.ROOT);
        return small.isEmpty() ? small : Character.toUpperCase(small.charAt(0)) + small.substring(1);
    }
}
