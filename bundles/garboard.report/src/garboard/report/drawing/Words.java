// SPDX-License-Identifier: EPL-2.0
package garboard.report.drawing;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.Properties;

import garboard.checks.Standing;

/** What stands on drawings, in one language. Paper is English; a window speaks the language of who looks at it. */
public final class Words {

    /** The words of the report. */
    public static final Words ENGLISH = in(Locale.ENGLISH);

    private final Properties texts = new Properties();

    private Words() {
    }

    /** {@return the words in a language, English where it is not translated} */
    public static Words in(Locale locale) {
        var words = new Words();
        words.load("messages.properties");
        words.load("messages_" + locale.getLanguage() + ".properties");
        return words;
    }

    private void load(String file) {
        try (var in = Words.class.getResourceAsStream(file)) {
            if (in != null) {
                texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(file + " of the drawings cannot be read from the bundle", broken);
        }
    }

    /**
     * {@return a text, its placeholders filled in}
     *
     * @throws IllegalArgumentException when there is no such text: a fault of ours that a test finds
     */
    public String get(String key, Object... arguments) {
        String pattern = texts.getProperty(key);
        if (pattern == null) {
            throw new IllegalArgumentException("No text \"" + key + "\" for drawings");
        }
        return arguments.length == 0 ? pattern : new MessageFormat(pattern, Locale.ROOT).format(arguments);
    }

    /** {@return whether there is such a text} */
    boolean has(String key) {
        return texts.containsKey(key);
    }

    /** {@return the word for a standing} */
    public String get(Standing standing) {
        return get("standing." + standing.name());
    }
}
