// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.text;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.text.MessageFormat;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The texts of the window in one language: {@code messages.properties} beside the class that shows them, a translation laid over it from
 * {@code messages_de.properties}. Keys are words; placeholders are those of {@link MessageFormat}.
 */
public final class Texts {

    private final Locale locale;
    private final Map<Package, Properties> read = new ConcurrentHashMap<>();

    private Texts(Locale locale) {
        this.locale = locale;
    }

    /** {@return the texts in a language, English where it is not translated} */
    public static Texts in(Locale locale) {
        return new Texts(locale);
    }

    public Locale locale() {
        return locale;
    }

    /** {@return the texts of the package that a class is in} */
    public Of of(Class<?> user) {
        return new Of(user, read.computeIfAbsent(user.getPackage(), none -> load(user)));
    }

    private Properties load(Class<?> user) {
        var texts = new Properties();
        load(user, "messages.properties", texts);
        load(user, "messages_" + locale.getLanguage() + ".properties", texts);
        return texts;
    }

    private static void load(Class<?> user, String file, Properties into) {
        try (var in = user.getResourceAsStream(file)) {
            if (in != null) {
                into.load(new InputStreamReader(in, StandardCharsets.UTF_8));
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(file + " of " + user.getPackageName() + " cannot be read from the bundle", broken);
        }
    }

    /** The texts of one package. */
    public static final class Of {
        private final Class<?> user;
        private final Properties texts;

        private Of(Class<?> user, Properties texts) {
            this.user = user;
            this.texts = texts;
        }

        /**
         * {@return a text, its placeholders filled in}
         *
         * @throws IllegalArgumentException when there is no such text: a fault of ours that a test finds
         */
        public String get(String key, Object... arguments) {
            String pattern = texts.getProperty(key);
            if (pattern == null) {
                throw new IllegalArgumentException("No text \"" + key + "\" in " + user.getPackageName());
            }
            return arguments.length == 0 ? pattern : new MessageFormat(pattern, Locale.ROOT).format(arguments);
        }

        /** {@return whether there is such a text} */
        public boolean has(String key) {
            return texts.containsKey(key);
        }
    }
}
