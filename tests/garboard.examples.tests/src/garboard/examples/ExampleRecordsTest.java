// SPDX-License-Identifier: EPL-2.0
package garboard.examples;

import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__ACCEPTANCES;
import static garboard.model.GarboardPackage.Literals.COMMISSIONING_RECORD__PRACTICES;
import static garboard.model.GarboardPackage.Literals.EXHAUST_RUN__SEPARATOR_DRAIN;
import static garboard.model.GarboardPackage.Literals.SIGNATURE;
import static garboard.model.GarboardPackage.Literals.SIGNATURE__VERDICTS;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.InputStream;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

import javax.imageio.ImageIO;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

import garboard.model.CommissioningRecord;
import garboard.model.Entered;
import garboard.model.GarboardPackage;
import garboard.model.Instrument;
import garboard.model.Photograph;
import garboard.model.Signature;
import garboard.model.SignatureRole;
import garboard.model.io.RecordFile;

/** The examples open, are whole, and say of themselves that they are made up. */
class ExampleRecordsTest {

    private static final int LARGEST_PICTURE = 60 * 1024;

    /** What a yard is glad to leave empty: no shortfall accepted, all practices at work, no separator, no verdicts laid down by hand. */
    private static final Set<EStructuralFeature> MAY_BE_EMPTY = Set.of(GarboardPackage.Literals.COMMISSIONING_RECORD__UNREAD_ENTRIES,
        COMMISSIONING_RECORD__PRACTICES, COMMISSIONING_RECORD__ACCEPTANCES,
        EXHAUST_RUN__SEPARATOR_DRAIN, SIGNATURE__VERDICTS);

    static List<Example> examples() {
        return Examples.all();
    }

    static CommissioningRecord record(Example example) throws Exception {
        return file(example).record();
    }

    private static RecordFile file(Example example) throws Exception {
        try (InputStream in = example.open()) {
            return RecordFile.read(in, example.name());
        }
    }

    @Test
    void areFoundByName() {
        assertThat(Examples.all()).extracting(Example::name).containsExactly("motor-cruiser", "sailing-yacht", "passenger-boat");
        assertThat(Examples.find("sailing-yacht")).contains(Examples.all().get(1));
        assertThat(Examples.find("row-boat")).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void openWithoutRemarkAndSaveUnchanged(Example example) throws Exception {
        RecordFile file = file(example);
        assertThat(file.notes()).isEmpty();
        try (InputStream in = example.open()) {
            assertThat(file.toBytes()).isEqualTo(in.readAllBytes());
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void sayThatTheyAreMadeUp(Example example) throws Exception {
        CommissioningRecord record = record(example);
        assertThat(record.getRemarks()).contains("invented");
        assertThat(record.getGeneratorSet().getMaker()).endsWith("(invented)");
        assertThat(record.getParties()).filteredOn(party -> party.getOrganisation() != null)
            .allSatisfy(party -> assertThat(party.getOrganisation()).endsWith("(invented)"));
        assertThat(record.getParties()).filteredOn(party -> party.getContact() != null)
            .allSatisfy(party -> assertThat(party.getContact()).endsWith(".example"));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void leaveNoPartOfTheRecordEmpty(Example example) throws Exception {
        CommissioningRecord record = record(example);
        assertThat(empty(record)).as("empty features").isEmpty();
        for (EReference part : COMMISSIONING_RECORD.getEAllContainments()) {
            if (!part.isMany()) {
                EObject system = (EObject) record.eGet(part);
                assertThat(empty(system).filter(EReference.class::isInstance)).as("empty parts of " + part.getName()).isEmpty();
            }
        }
    }

    private static Stream<EStructuralFeature> empty(EObject part) {
        return part.eClass().getEAllStructuralFeatures().stream().filter(feature -> !MAY_BE_EMPTY.contains(feature))
            .filter(feature -> !Entered.anythingIn(part, feature));
    }

    /** What no example fills in, nobody sees in form, report or workbench before a customer does. */
    @Test
    void togetherFillInEveryField() throws Exception {
        Set<String> missing = new TreeSet<>();
        COMMISSIONING_RECORD.getEPackage().getEClassifiers().stream().filter(EClass.class::isInstance).map(EClass.class::cast)
            .filter(type -> !type.isAbstract() && type.getInstanceClass() != garboard.model.StoredVerdict.class
                && type.getInstanceClass() != garboard.model.SeparatorDrain.class && type.getInstanceClass() != garboard.model.UnreadEntry.class)
            .forEach(type -> type.getEAllStructuralFeatures().forEach(feature -> missing.add(type.getName() + "." + feature.getName())));
        for (Example example : Examples.all()) {
            CommissioningRecord record = record(example);
            remove(record, missing);
            record.eAllContents().forEachRemaining(part -> remove(part, missing));
        }
        assertThat(missing).as("fields that no example fills in").containsExactlyInAnyOrder(
            "CommissioningRecord.practices", "CommissioningRecord.unreadEntries", "Signature.verdicts", // everything was read, all practices at work, nothing laid down by a program
            "ExhaustRun.separatorDrain", "SiphonBreak.bleedBore", // another kind of exhaust, another kind of siphon break
            "AcOutput.legACurrent", "AcOutput.legBCurrent"); // no split phase among the three
    }

    private static void remove(EObject part, Set<String> missing) {
        part.eClass().getEAllStructuralFeatures().stream().filter(part::eIsSet)
            .forEach(feature -> missing.remove(part.eClass().getName() + "." + feature.getName()));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void photographsDecodeAndAreSmall(Example example) throws Exception {
        List<Photograph> photographs = record(example).getPhotographs();
        assertThat(photographs).isNotEmpty();
        for (Photograph photograph : photographs) {
            assertThat(photograph.getData()).as(photograph.getCaption()).hasSizeLessThanOrEqualTo(LARGEST_PICTURE);
            assertThat(photograph.getMediaType()).isEqualTo("image/png");
            assertThat(ImageIO.read(new ByteArrayInputStream(photograph.getData()))).as(photograph.getCaption())
                .satisfies(image -> assertThat(image.getWidth()).isGreaterThanOrEqualTo(320));
        }
    }

    @ParameterizedTest
    @MethodSource("examples")
    void referencesResolve(Example example) throws Exception {
        CommissioningRecord record = record(example);
        assertThat(record.getInspections()).anySatisfy(answer -> assertThat(answer.getPhotographs()).isNotEmpty());
        assertThat(record.getInspections()).flatExtracting(answer -> answer.getPhotographs())
            .allSatisfy(photograph -> assertThat(record.getPhotographs()).contains((Photograph) photograph));
        List<String> instruments = record.getInstruments().stream().map(Instrument::getId).toList();
        assertThat(record.getTrial().getLoadSteps()).flatExtracting(step -> step.getReadings())
            .allSatisfy(reading -> assertThat(((garboard.model.Reading) reading).getInstruments().split(", ")).isSubsetOf(instruments));
    }

    @ParameterizedTest
    @MethodSource("examples")
    void areSignedByTheInstallerAndNotYetByTheOwner(Example example) throws Exception {
        List<Signature> signatures = record(example).getSignatures();
        assertThat(signatures).extracting(Signature::getRole).containsExactly(SignatureRole.INSTALLER, SignatureRole.OWNER);
        assertThat(signatures.get(0).eIsSet(SIGNATURE.getEStructuralFeature("signedOn"))).isTrue();
        assertThat(signatures.get(1).eIsSet(SIGNATURE.getEStructuralFeature("signedOn"))).isFalse();
    }
}
