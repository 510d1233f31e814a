// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;
import java.util.Optional;
import java.util.Properties;

/** Texts of a properties file beside this class, a translation laid over the English ones. */
final class Texts {

    private final Properties english;
    private final Properties texts;

    private Texts(Properties english, Properties texts) {
        this.english = english;
        this.texts = texts;
    }

    /** Reads {@code name.properties} and over it {@code name_de.properties}, {@code name_de_AT.properties} where they exist. */
    static Texts read(String name, Locale locale) {
        Properties english = new Properties();
        load(name, english);
        Properties texts = english;
        if (!locale.getLanguage().isEmpty()) {
            texts = translated(name + "_" + locale.getLanguage(), texts);
            if (!locale.getCountry().isEmpty()) {
                texts = translated(name + "_" + locale.getLanguage() + "_" + locale.getCountry(), texts);
            }
        }
        return new Texts(english, texts);
    }

    Optional<String> find(String key) {
        return Optional.ofNullable(texts.getProperty(key));
    }

    /** {@return the text before any translation} */
    Optional<String> findEnglish(String key) {
        return Optional.ofNullable(english.getProperty(key));
    }

    private static Properties translated(String name, Properties under) {
        Properties over = new Properties(under);
        load(name, over);
        return over.isEmpty() ? under : over;
    }

    private static void load(String name, Properties into) {
        try (InputStream file = Texts.class.getResourceAsStream(name + ".properties")) {
            if (file != null) {
                Reader text = new InputStreamReader(file, StandardCharsets.UTF_8);
                into.load(text);
            }
        } catch (IOException broken) {
            throw new UncheckedIOException(name + ".properties cannot be read from the bundle", broken);
        }
    }
}
