// SPDX-License-Identifier: EPL-2.0
package garboard.model.io;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;

import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.ecore.util.FeatureMap;
import org.eclipse.emf.ecore.xml.type.AnyType;
import org.eclipse.emf.ecore.xml.type.XMLTypeFactory;

import garboard.model.CommissioningRecord;
import garboard.model.Labels;
import garboard.model.RecordPath;

/** Makes the bytes of a record file. */
final class RecordWriter {

    /** Namespace and name of the attribute of the record that tells the highest numbers of ids given, for those that are gone. */
    static final String IDS = "urn:garboard:ids";
    static final String LAST = "last";

    private final RecordResource resource;
    private final CommissioningRecord record;

    RecordWriter(RecordResource resource, CommissioningRecord record) {
        this.resource = resource;
        this.record = record;
    }

    byte[] bytes() throws RecordWriteException {
        putInOrder();
        Optional<String> unfit = unfit();
        if (unfit.isPresent()) {
            throw new RecordWriteException(unfit.get());
        }
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try {
            resource.save(bytes, Map.of());
        } catch (IOException broken) {
            throw new RecordWriteException("The record cannot be written: " + broken.getMessage(), broken);
        }
        if (bytes.size() > RecordReader.LARGEST) {
            throw new RecordWriteException("The record cannot be written: with its photographs it takes " + (bytes.size() >> 20)
                + " MiB, and at most " + (RecordReader.LARGEST >> 20) + " could be read again; make the photographs smaller");
        }
        if (!resource.getEObjectToExtensionMap().isEmpty()) {
            openAgain(bytes.toByteArray());
        }
        return bytes.toByteArray();
    }

    /** What a record owes its file: ids, the version it is written in, no reference to what was taken out of it. */
    private void putInOrder() {
        Items items = Items.of(record);
        items.assign();
        boolean older = record.getFormatVersion() == null
            || FormatVersion.of(record.getFormatVersion()).map(version -> version.compareTo(FormatVersion.CURRENT) < 0).orElse(false);
        if (older) {
            record.setFormatVersion(FormatVersion.CURRENT.toString());
        }
        everything().forEach(this::dropDangling);
        keep(items.forgotten());
    }

    private void dropDangling(EObject part) {
        for (EReference reference : part.eClass().getEAllReferences()) {
            if (!reference.isContainment() && part.eIsSet(reference)) {
                EcoreUtil.getObjectsByType(targets(part, reference), reference.getEReferenceType()).stream()
                    .map(EObject.class::cast)
                    .filter(target -> !EcoreUtil.isAncestor(record, target))
                    .forEach(target -> EcoreUtil.remove(part, reference, target));
            }
        }
    }

    private static List<?> targets(EObject part, EReference reference) {
        Object value = part.eGet(reference);
        return value instanceof List<?> list ? list : List.of(value);
    }

    private void keep(String forgottenIds) {
        Map<EObject, AnyType> unknown = resource.getEObjectToExtensionMap();
        if (forgottenIds.isEmpty() && !unknown.containsKey(record)) {
            return;
        }
        EStructuralFeature last = resource.names().demandFeature(IDS, LAST, false);
        FeatureMap attributes = unknown.computeIfAbsent(record, none -> XMLTypeFactory.eINSTANCE.createAnyType()).getAnyAttribute();
        attributes.unset(last);
        if (!forgottenIds.isEmpty()) {
            attributes.add(last, forgottenIds);
        }
    }

    /** What another program left in a record is not ours to vouch for; a file that would not open again must not replace one that does. */
    private void openAgain(byte[] bytes) throws RecordWriteException {
        try {
            new RecordReader("what would be written").read(new ByteArrayInputStream(bytes));
        } catch (RecordReadException refused) {
            throw new RecordWriteException("The record cannot be written: with what another program left in it, " + refused.getMessage(), refused);
        }
    }

    /** {@return a sentence about the first text with a character that XML cannot hold} */
    private Optional<String> unfit() {
        return everything().flatMap(part -> part.eClass().getEAllAttributes().stream()
            .filter(attribute -> attribute.getEAttributeType().getInstanceClass() == String.class && part.eIsSet(attribute))
            .flatMap(attribute -> texts(part, attribute).map(RecordWriter::unfitIn).flatMap(Optional::stream)
                .map(character -> "The record cannot be written: " + RecordPath.words(part, attribute, Labels.in(Locale.ENGLISH))
                    + " holds " + character + ", which no record file can hold; delete it")))
            .findFirst();
    }

    private static Stream<String> texts(EObject part, EAttribute attribute) {
        Object value = part.eGet(attribute);
        return value instanceof List<?> list ? list.stream().map(String.class::cast) : Stream.of((String) value);
    }

    private static Optional<String> unfitIn(String text) {
        return text.codePoints().filter(character -> !fits(character)).mapToObj(character -> String.format("the character U+%04X", character))
            .findFirst();
    }

    /** XML 1.0, fifth edition, production 2 (Char). */
    private static boolean fits(int character) {
        return character == '\t' || character == '\n' || character == '\r' || character >= 0x20 && character <= 0xD7FF
            || character >= 0xE000 && character <= 0xFFFD || character >= 0x10000;
    }

    private Stream<EObject> everything() {
        Iterable<EObject> parts = record::eAllContents;
        return Stream.concat(Stream.of(record), StreamSupport.stream(parts.spliterator(), false));
    }
}
