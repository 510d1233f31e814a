// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import java.util.Locale;

/**
 * The sentences that tell a person what is wrong with a text and what would be right, in one language. They stand in
 * {@code refusals.properties}, which is read when something is refused for the first time: what is in order costs nothing.
 */
final class Refusals {

    /** Longest piece of a wrong text that a sentence repeats. */
    private static final int REPEATED = 60;

    private final Texts sentences;

    private Refusals(Locale locale) {
        this.sentences = Texts.read("refusals", locale);
    }

    /** {@return the sentences in a language, English where they are not translated} */
    static Refusals in(Locale locale) {
        return new Refusals(locale);
    }

    /** {@return the sentences in English, those of record files} */
    static Refusals english() {
        return English.SENTENCES;
    }

    /** {@return why a text is refused, as an exception to throw} */
    FieldTextException refuse(String why, String text) {
        return new FieldTextException(sentence(why, text, ""));
    }

    /** {@return why a text is refused, as an exception to throw, with the exception that found it} */
    FieldTextException refuse(String why, String text, Exception cause) {
        return new FieldTextException(sentence(why, text, ""), cause);
    }

    /** {@return why a text is refused and what is right instead, as an exception to throw} */
    FieldTextException refuse(String why, String text, String right) {
        return new FieldTextException(sentence(why, text, right));
    }

    private String sentence(String why, String text, String right) {
        String sentence = sentences.find(why).orElseThrow(() -> new IllegalStateException("There is no sentence for " + why));
        // what is right first: what was typed may itself hold braces
        return sentence.replace("{1}", right).replace("{0}", shortened(text));
    }

    static String shortened(String text) {
        return text.length() > REPEATED ? text.substring(0, REPEATED) + "..." : text;
    }

    private static final class English {
        static final Refusals SENTENCES = new Refusals(Locale.ROOT);
    }
}
