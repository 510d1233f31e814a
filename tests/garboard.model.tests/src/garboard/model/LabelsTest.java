// SPDX-License-Identifier: EPL-2.0
package garboard.model;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.EcorePackage;
import org.junit.jupiter.api.Test;

import garboard.model.GarboardPackage.Literals;
import garboard.quantity.Quantity;

class LabelsTest {

    private final Labels labels = Labels.in(Locale.ENGLISH);

    private static Stream<EClass> classes() {
        return GarboardPackage.eINSTANCE.getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast);
    }

    private static Stream<EStructuralFeature> features() {
        return classes().flatMap(type -> type.getEStructuralFeatures().stream());
    }

    private static Stream<EEnumLiteral> choices() {
        return GarboardPackage.eINSTANCE.getEClassifiers().stream().filter(EEnum.class::isInstance)
            .flatMap(type -> ((EEnum) type).getELiterals().stream());
    }

    private static Set<String> keys(String file) throws IOException {
        Properties texts = new Properties();
        try (InputStream in = Labels.class.getResourceAsStream(file)) {
            texts.load(new InputStreamReader(in, StandardCharsets.UTF_8));
        }
        assertThat(texts.values()).allSatisfy(text -> assertThat((String) text).isNotBlank().isEqualTo(((String) text).strip()));
        return new TreeSet<>(texts.stringPropertyNames());
    }

    @Test
    void callsThingsByTheirTradeNames() {
        assertThat(labels.label(Literals.RAW_WATER_CIRCUIT)).isEqualTo("Raw-water circuit");
        assertThat(labels.label(Literals.SIPHON_BREAK__VENT_SEAT)).isEqualTo("Vent seat");
        assertThat(labels.label(HullKind.SAILING_MONOHULL)).isEqualTo("Sailing monohull");
        assertThat(labels.label(Literals.HULL_KIND.getEEnumLiteral("SAILING_MONOHULL"))).isEqualTo("Sailing monohull");
        assertThat(labels.labelOfPath(List.of(Literals.RAW_WATER_CIRCUIT__SIPHON_BREAK, Literals.SIPHON_BREAK__VENT_SEAT, Literals.POINT__Z)))
            .isEqualTo("Siphon break › Vent seat › z, above waterline");
    }

    @Test
    void everyClassFeatureAndChoiceHasALabelAndNoLabelIsOfNothing() throws IOException {
        Set<String> wanted = new TreeSet<>();
        classes().forEach(type -> wanted.add(type.getName()));
        features().forEach(feature -> wanted.add(feature.getEContainingClass().getName() + "." + feature.getName()));
        choices().forEach(choice -> wanted.add(choice.getEEnum().getName() + "." + choice.getName()));

        assertThat(keys("labels.properties")).isEqualTo(wanted);
    }

    @Test
    void everyQuantityAndInspectedFieldTellsHow() throws IOException {
        Set<String> told = keys("how.properties");
        Set<String> known = new TreeSet<>();
        features().forEach(feature -> known.add(feature.getEContainingClass().getName() + "." + feature.getName()));
        assertThat(known).containsAll(told);

        assertThat(features().filter(feature -> feature.getEType().getInstanceClass() != null
            && Quantity.class.isAssignableFrom(feature.getEType().getInstanceClass())).toList()).hasSizeGreaterThan(250)
            .allSatisfy(this::tellsHow);
        // the steps of a procedure and the answers to free questions tell themselves what is asked
        Set<EStructuralFeature> plain = Set.of(Literals.PROCEDURE_STEP__DONE, Literals.INSPECTION_ANSWER__ANSWER, Literals.CRANKING_ATTEMPT__FIRED);
        assertThat(features().filter(feature -> feature.getEType() == Literals.ANSWER && !plain.contains(feature)).toList())
            .hasSizeGreaterThan(100).allSatisfy(this::tellsHow);
    }

    private void tellsHow(EStructuralFeature feature) {
        assertThat(labels.how(feature)).as(feature.getEContainingClass().getName() + "." + feature.getName()).isPresent();
    }

    @Test
    void labelsWithinAClassAndWithinAChoiceDiffer() {
        classes().forEach(type -> assertThat(type.getEAllStructuralFeatures().stream().map(labels::label)).as(type.getName())
            .doesNotHaveDuplicates());
        GarboardPackage.eINSTANCE.getEClassifiers().stream().filter(EEnum.class::isInstance).map(EEnum.class::cast)
            .forEach(type -> assertThat(type.getELiterals().stream().map(labels::label)).as(type.getName()).doesNotHaveDuplicates());
    }

    @Test
    void cautionsStandWhereTheHandsGo() {
        assertThat(labels.how(Literals.EXHAUST_RUN__GAS_TIGHT).orElseThrow()).containsIgnoringCase("carbon-monoxide");
        assertThat(labels.how(Literals.TRIAL__CARBON_MONOXIDE_CABIN).orElseThrow()).contains("get everyone out");
        assertThat(labels.how(Literals.READING__VOLTAGE1).orElseThrow()).contains("Mains voltage");
        assertThat(labels.how(Literals.MOUNTING__ROTATING_PARTS_GUARDED).orElseThrow()).contains("locked off");
        assertThat(labels.how(Literals.FUEL_SUPPLY__RAIL_PRESSURE).orElseThrow()).contains("Fuel under pressure");
        assertThat(labels.how(Literals.VESSEL__NAME)).isEmpty();
    }

    @Test
    void aTranslationIsLaidOverTheEnglishTexts() {
        Labels translated = Labels.in(Locale.forLanguageTag("xx-YY"));
        assertThat(translated.label(Literals.SEACOCK)).isEqualTo("Seacock of xx-YY");
        assertThat(translated.label(Literals.MUFFLER)).isEqualTo("Muffler of xx");
        assertThat(translated.label(Literals.RISER)).isEqualTo("Riser");
        assertThat(translated.how(Literals.SEACOCK__WORKS_FREELY)).contains("Turn it in xx.");
        assertThat(translated.how(Literals.SEACOCK__FULL_BORE)).isEqualTo(labels.how(Literals.SEACOCK__FULL_BORE));
        assertThat(Labels.in(Locale.FRANCE).label(Literals.SEACOCK)).isEqualTo("Seacock");
    }

    @Test
    void whatHasNoLabelIsCalledByItsNameInWords() {
        assertThat(labels.label(EcorePackage.Literals.ECLASS__ESUPER_TYPES)).isEqualTo("E super types");
        assertThat(Camel.words("siphonBreak")).isEqualTo("Siphon break");
        assertThat(Camel.words("SAILING_MONOHULL")).isEqualTo("Sailing monohull");
        assertThat(Camel.words("voltage1")).isEqualTo("Voltage1");
    }
}
