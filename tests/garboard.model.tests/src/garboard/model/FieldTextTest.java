// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.Arrays;
import java.util.Locale;
import java.util.Random;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EcorePackage;
import org.junit.jupiter.api.Test;

import garboard.model.GarboardPackage.Literals;
import garboard.model.testing.RandomValues;
import garboard.quantity.Length;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

class FieldTextTest {

    private final Labels german = Labels.in(Locale.GERMAN);

    private static void refused(EDataType type, String text, String message) {
        assertThatThrownBy(() -> FieldText.value(type, text)).isInstanceOf(FieldTextException.class).hasMessage(message);
    }

    @Test
    void readsEveryKindOfValue() {
        assertThat(FieldText.value(Literals.LENGTH, "1 1/2 in")).contains(Length.valueOf("1 1/2 in"));
        assertThat(FieldText.value(Literals.HULL_KIND, "sailing-monohull")).contains(HullKind.SAILING_MONOHULL);
        assertThat(FieldText.value(EcorePackage.Literals.EINTEGER_OBJECT, " 12 ")).contains(12);
        assertThat(FieldText.value(Literals.DATE, "2026-05-31")).contains(LocalDate.of(2026, 5, 31));
        assertThat(FieldText.value(Literals.DATE, " ")).isEmpty();
        assertThat(FieldText.value(Literals.DATE_TIME, "2026-05-31T14:05:00+02:00")).contains(OffsetDateTime.parse("2026-05-31T14:05+02:00"));
        assertThat(FieldText.value(Literals.TEXT, " as it is\n")).contains(" as it is\n");
        assertThat((byte[]) FieldText.value(EcorePackage.Literals.EBYTE_ARRAY, "00fF").orElseThrow()).containsExactly(0, -1);
    }

    @Test
    void tellsWhatWasFoundAndWhatIsRight() {
        refused(Literals.LENGTH, "38 furlongs", "length: \"38 furlongs\" - furlongs is not a unit of length; use mm, cm, m, in or ft");
        refused(Literals.ANSWER, "maybe", "\"maybe\" is none of the choices; right would be one of unanswered, yes, no, not-applicable");
        refused(EcorePackage.Literals.EINTEGER_OBJECT, "3.5", "\"3.5\" is no whole number; right would be, for example, 4");
        refused(Literals.DATE, "31.5.26", "\"31.5.26\" is no date; right would be year-month-day, for example 2026-05-31");
        refused(EcorePackage.Literals.EBYTE_ARRAY, "0", "\"0\" is no picture; right would be pairs of hexadecimal digits");
    }

    @Test
    void readsChoicesByTheirNameInTheLanguageInEnglishAndByTheirLiteral() {
        for (String name : Arrays.asList("Segelboot, Einrumpf", " segelboot, EINRUMPF ", "Sailing monohull", "sailing-monohull")) {
            assertThat(FieldText.value(Literals.HULL_KIND, name, german)).as(name).contains(HullKind.SAILING_MONOHULL);
        }
        assertThat(FieldText.value(Literals.SMOKE_COLOUR, "weiß", german)).contains(SmokeColour.WHITE);
        assertThat(FieldText.value(Literals.HULL_KIND, "Sailing monohull", Labels.in(Locale.ENGLISH))).contains(HullKind.SAILING_MONOHULL);
        assertThatThrownBy(() -> FieldText.value(Literals.HULL_KIND, "Segelboot, Einrumpf", Labels.in(Locale.ENGLISH)))
            .isInstanceOf(FieldTextException.class);
        assertThat(FieldText.text(Literals.HULL_KIND, HullKind.SAILING_MONOHULL, german)).isEqualTo("Segelboot, Einrumpf");
    }

    @Test
    void recordFilesNameChoicesByTheirLiteralOnly() {
        for (String name : Arrays.asList("Segelboot, Einrumpf", "Sailing monohull", "SAILING-MONOHULL", " sailing-monohull")) {
            assertThatThrownBy(() -> FieldText.value(Literals.HULL_KIND, name)).as(name).isInstanceOf(FieldTextException.class);
        }
        assertThat(FieldText.text(Literals.HULL_KIND, HullKind.SAILING_MONOHULL)).isEqualTo("sailing-monohull");
    }

    @Test
    void readsADecimalCommaInGermanAndKeepsItAsTyped() {
        assertThat(FieldText.value(Literals.LENGTH, "3,5 m", german)).contains(Length.valueOf("3,5 m"));
        assertThat(FieldText.text(Literals.LENGTH, Length.valueOf("3,5 m"), german)).isEqualTo("3,5 m");
    }

    private void refusedInGerman(EDataType type, String text, String message) {
        assertThatThrownBy(() -> FieldText.value(type, text, german)).isInstanceOf(FieldTextException.class).hasMessage(message);
    }

    @Test
    void tellsInGermanWhatWasFoundAndWhatIsRight() {
        refusedInGerman(Literals.ANSWER, "vielleicht",
            "„vielleicht“ steht nicht zur Auswahl; richtig wäre eines von: Nicht beantwortet, Ja, Nein, Entfällt");
        refusedInGerman(EcorePackage.Literals.EINTEGER_OBJECT, "3,5", "„3,5“ ist keine ganze Zahl; richtig wäre zum Beispiel 4");
        refusedInGerman(Literals.DATE, "31.5.26", "„31.5.26“ ist kein Datum; richtig wäre Jahr-Monat-Tag, zum Beispiel 2026-05-31");
        refusedInGerman(Literals.DATE_TIME, "heute",
            "„heute“ ist kein Datum mit Uhrzeit und Zeitzone; richtig wäre zum Beispiel 2026-05-31T14:05:00+02:00");
        refusedInGerman(EcorePackage.Literals.EBYTE_ARRAY, "0", "„0“ ist kein Bild; richtig wären Paare hexadezimaler Ziffern");
        refusedInGerman(Literals.LENGTH, "9".repeat(300), "„" + "9".repeat(60) + "...“ ist zu lang; richtig wären eine Zahl und eine Einheit");
    }

    @Test
    void takesBracesInATextForWhatTheyAre() {
        refused(Literals.DATE, "{1}", "\"{1}\" is no date; right would be year-month-day, for example 2026-05-31");
    }

    @Test
    void doesNotRepeatAWholeNovel() {
        assertThatThrownBy(() -> FieldText.value(Literals.DATE, "x".repeat(1000))).hasMessageStartingWith("\"" + "x".repeat(60) + "...\" is no date");
    }

    @Property(tries = 50)
    void whatIsWrittenIsRead(@ForAll long seed) {
        RandomValues values = new RandomValues(new Random(seed));
        GarboardPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance)
            .flatMap(type -> ((EClass) type).getEAttributes().stream()).map(EAttribute::getEAttributeType).distinct().forEach(type -> {
                Object value = values.value(type);
                assertThat(FieldText.value(type, FieldText.text(type, value)).orElseThrow()).as(type.getName()).isEqualTo(value);
                assertThat(FieldText.value(type, FieldText.text(type, value, german), german).orElseThrow()).as(type.getName())
                    .isEqualTo(value);
            });
    }
}
