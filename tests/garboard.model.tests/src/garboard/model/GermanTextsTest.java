// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import static java.util.Map.entry;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import garboard.model.GarboardPackage.Literals;

class GermanTextsTest {

    /** What German and English say alike: designations, and words that both languages have. */
    private static final Set<String> ALIKE = Set.of("60 °C", "70 °C", "75 °C", "80 °C", "90 °C", "105 °C", "125 °C", "200 °C", "AGM",
        "Aluminium", "Bilge", "Bronze", "Cockpit", "Diesel", "EN 50342-1", "G1", "G2", "G3", "G4", "Gel", "IEC 60095-1", "Motor", "Name",
        "Tank");

    private static final Pattern FIGURE = Pattern.compile("\\d+(?:[.,]\\d+)?");
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{\\d+}");
    /** Two bytes of UTF-8 that were read as two letters, or a letter that was lost. */
    private static final Pattern GARBLED = Pattern.compile("[ÃÂâ\uFFFD]");
    private static final Pattern FAMILIAR = Pattern.compile("(?iu)\\b(du|dir|dich|dein\\w*)\\b");

    private final Labels german = Labels.in(Locale.GERMAN);

    private static Map<String, String> texts(String file) throws IOException {
        Properties read = new Properties();
        try (InputStream in = Labels.class.getResourceAsStream(file + ".properties")) {
            read.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        Map<String, String> texts = new TreeMap<>();
        read.stringPropertyNames().forEach(key -> texts.put(key, read.getProperty(key)));
        return texts;
    }

    private static List<String> found(Pattern pattern, String text) {
        List<String> found = new ArrayList<>();
        Matcher matcher = pattern.matcher(text);
        while (matcher.find()) {
            found.add(matcher.group().replace(',', '.'));
        }
        found.sort(null);
        return found;
    }

    private static Stream<EEnum> choices() {
        return GarboardPackage.eINSTANCE.getEClassifiers().stream().filter(EEnum.class::isInstance).map(EEnum.class::cast);
    }

    @ParameterizedTest
    @ValueSource(strings = {"labels", "how", "refusals"})
    void everyTextIsTranslatedAndNoTranslationIsOfNothing(String file) throws IOException {
        assertThat(texts(file + "_de").keySet()).isNotEmpty().isEqualTo(texts(file).keySet());
    }

    @ParameterizedTest
    @ValueSource(strings = {"labels", "how", "refusals"})
    void figuresAndPlaceholdersAreThoseOfTheEnglishText(String file) throws IOException {
        Map<String, String> translated = texts(file + "_de");
        texts(file).forEach((key, english) -> {
            assertThat(found(FIGURE, translated.get(key))).as(key).isEqualTo(found(FIGURE, english));
            assertThat(found(PLACEHOLDER, translated.get(key))).as(key).isEqualTo(found(PLACEHOLDER, english));
        });
    }

    @ParameterizedTest
    @ValueSource(strings = {"labels", "how", "refusals"})
    void noTextIsLeftInEnglish(String file) throws IOException {
        Map<String, String> translated = texts(file + "_de");
        texts(file).forEach((key, english) -> {
            if (!ALIKE.contains(english)) {
                assertThat(translated.get(key)).as(key).isNotEqualTo(english);
            }
        });
    }

    @Test
    void whatIsListedAsAlikeIsAlike() throws IOException {
        Map<String, String> translated = texts("labels_de");
        Set<String> alike = new TreeSet<>();
        texts("labels").forEach((key, english) -> {
            if (english.equals(translated.get(key))) {
                alike.add(english);
            }
        });
        assertThat(alike).isEqualTo(new TreeSet<>(ALIKE));
    }

    @ParameterizedTest
    @ValueSource(strings = {"labels_de", "how_de", "refusals_de"})
    void textsAreTidyAndPolite(String file) throws IOException {
        assertThat(texts(file)).allSatisfy((key, text) -> assertThat(text).as(key).isNotBlank().isEqualTo(text.strip())
            .doesNotContain("  ", " ,", " .").doesNotContainPattern(GARBLED).doesNotContainPattern(FAMILIAR));
    }

    @Test
    void instructionsEndAsSentences() throws IOException {
        assertThat(texts("how_de")).allSatisfy((key, text) -> assertThat(text).as(key).matches(".*[.?]"));
    }

    @Test
    void labelsWithinAClassAndWithinAChoiceDiffer() {
        GarboardPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
            .forEach(type -> assertThat(type.getEAllStructuralFeatures().stream().map(german::label)).as(type.getName())
                .doesNotHaveDuplicates());
        choices().forEach(type -> assertThat(type.getELiterals().stream().map(german::label)).as(type.getName()).doesNotHaveDuplicates());
    }

    @Test
    void everyNameOfAChoiceInEitherLanguageMeansThatChoice() {
        Labels english = Labels.in(Locale.ENGLISH);
        assertThat(choices().flatMap(type -> type.getELiterals().stream()).toList()).hasSizeGreaterThan(200).allSatisfy(choice -> {
            EEnum type = choice.getEEnum();
            for (String name : List.of(german.label(choice), english.label(choice), choice.getLiteral())) {
                assertThat(german.choice(type, name).map(EEnumLiteral::getName)).as(type.getName() + " " + name).contains(choice.getName());
            }
        });
        assertThat(german.choice(Literals.HULL_KIND, "Ruderboot")).isEmpty();
    }

    @Test
    void speaksTheLanguageOfTheTrade() {
        assertThat(german.label(Literals.SEACOCK)).isEqualTo("Seeventil");
        assertThat(german.label(Literals.SIPHON_BREAK)).isEqualTo("Siphonbrecher");
        assertThat(german.label(Literals.READING__COOLANT_TEMPERATURE)).isEqualTo("Kühlmitteltemperatur");
        assertThat(german.label(HullKind.SAILING_MONOHULL)).isEqualTo("Segelboot, Einrumpf");
        assertThat(german.labelOfPath(List.of(Literals.RAW_WATER_CIRCUIT__SIPHON_BREAK, Literals.SIPHON_BREAK__VENT_SEAT, Literals.POINT__Z)))
            .isEqualTo("Siphonbrecher › Ventilsitz › z, über der Wasserlinie");
        assertThat(Labels.in(Locale.forLanguageTag("de-CH")).label(Literals.SEACOCK)).isEqualTo("Seeventil");
    }

    /** The other words of the trade for the same things, which are right elsewhere and not here: the list is in labels_de.properties. */
    @ParameterizedTest
    @ValueSource(strings = {"labels_de", "how_de", "refusals_de"})
    void oneThingHasOneName(String file) throws IOException {
        assertThat(texts(file)).allSatisfy((key, text) -> assertThat(text).as(key).doesNotContainIgnoringCase("Seehahn", "Rohwasser",
            "Belüftungsventil", "Spannungsabfall", "Wassersperre", "Auspufftopf", "Kaltstartprüfstrom", "Masseleiter", "Erdleiter",
            "FI-Schalter", "Abgasdruck", "Rumpfdurchlass", "Krängungswinkel", "Treibstoff"));
    }

    @Test
    void cautionsStandWhereTheHandsGo() {
        assertThat(german.how(Literals.EXHAUST_RUN__GAS_TIGHT).orElseThrow()).contains("Kohlenmonoxid", "stoppen Sie");
        assertThat(german.how(Literals.TRIAL__CARBON_MONOXIDE_CABIN).orElseThrow()).contains("müssen alle sofort ins Freie");
        assertThat(german.how(Literals.READING__VOLTAGE1).orElseThrow()).contains("Netzspannung");
        assertThat(german.how(Literals.MOUNTING__ROTATING_PARTS_GUARDED).orElseThrow()).contains("gegen Start gesichert");
        assertThat(german.how(Literals.FUEL_SUPPLY__RAIL_PRESSURE).orElseThrow()).contains("Kraftstoff unter Druck");
    }

    /** Each caution of the English text, and what it must be in the German one. */
    @Test
    void noCautionIsLostInTranslation() throws IOException {
        Map<String, String> cautions = Map.ofEntries(entry("carbon monoxide", "Kohlenmonoxid"), entry("carbon-monoxide", "Kohlenmonoxid"),
            entry("Mains voltage", "Netzspannung"), entry("turning parts", "drehenden? Teilen?"), entry("Burns at a touch", "Verbrennungsgefahr"),
            entry("licensed electrician", "Elektrofachkraft"), entry("goggles", "Schutzbrille"), entry("no spark", "keine Funken"),
            entry("no flame", "keine Flamme"), entry("Never open", "niemals"), entry("stop the set", "stopp(en Sie|t)"),
            entry("get everyone out", "alle sofort ins Freie"));
        Map<String, String> translated = texts("how_de");
        texts("how").forEach((key, english) -> cautions.forEach((caution, wanted) -> {
            if (english.contains(caution)) {
                assertThat(translated.get(key)).as(key).containsPattern(wanted);
            }
        }));
    }

    @Test
    void englishStaysEnglishWhateverTheMachineSpeaks() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(Labels.in(Locale.ENGLISH).label(Literals.SEACOCK)).isEqualTo("Seacock");
            assertThat(Labels.in(Locale.ROOT).label(Literals.SEACOCK)).isEqualTo("Seacock");
            assertThat(Labels.in(Locale.ENGLISH).choice(Literals.ANSWER, "Ja")).isEmpty();
        } finally {
            Locale.setDefault(before);
        }
    }
}
