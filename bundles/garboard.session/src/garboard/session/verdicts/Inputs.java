// SPDX-License-Identifier: EPL-2.0
package garboard.session.verdicts;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.checks.FeaturePath;
import garboard.checks.Missing;
import garboard.checks.Verdict;
import garboard.model.GarboardPackage.Literals;
import garboard.model.RecordPath;
import garboard.quantity.Quantity;
import garboard.session.OpenRecord;
import garboard.session.RecordKey;

/** Where a verdict leads to: the places of the record that it was judged by. */
public final class Inputs {

    private Inputs() {
    }

    /** {@return the key of the place where to begin: what is missing, else what the remedy changes, else what decides it, else its subject} */
    public static String target(Verdict verdict) {
        return verdict.missing().stream().findFirst().map(Missing::key)
            .or(() -> verdict.remedy().flatMap(remedy -> remedy.changes().stream().findFirst())
                .map(change -> RecordPath.key(change.target(), change.feature())))
            .or(() -> keys(verdict).stream().findFirst()).orElse(verdict.subjectKey());
    }

    /** {@return the keys of the places that the verdict needs, in the order in which the check asks for them; a list as a whole} */
    public static List<String> keys(Verdict verdict) {
        Set<String> keys = new LinkedHashSet<>();
        for (FeaturePath path : verdict.check().needs()) {
            key(verdict, path).ifPresent(keys::add);
        }
        return List.copyOf(keys);
    }

    private static Optional<String> key(Verdict verdict, FeaturePath path) {
        EClass owner = path.first().getEContainingClass();
        EObject subject = verdict.subject();
        Optional<String> above = subject != null && owner.isSuperTypeOf(subject.eClass()) ? Optional.of(verdict.subjectKey())
            : owner == Literals.COMMISSIONING_RECORD ? Optional.of("") : single(Literals.COMMISSIONING_RECORD, owner);
        return above.map(start -> {
            var key = new StringBuilder(start);
            for (EStructuralFeature feature : path.features()) {
                key.append(key.isEmpty() ? "" : ".").append(feature.getName());
                if (feature.isMany()) {
                    break;
                }
            }
            return key.toString();
        });
    }

    /** The way to a part that a record has once. */
    private static Optional<String> single(EClass from, EClass type) {
        for (EReference reference : from.getEAllContainments()) {
            if (!reference.isMany()) {
                Optional<String> way = reference.getEReferenceType() == type ? Optional.of(reference.getName())
                    : single(reference.getEReferenceType(), type).map(below -> reference.getName() + "." + below);
                if (way.isPresent()) {
                    return way;
                }
            }
        }
        return Optional.empty();
    }

    /** {@return whether a quantity stands in the record as it is, and was not computed} Such a one is shown as it was entered. */
    public static boolean isEntered(OpenRecord record, Verdict verdict, Quantity<?> quantity) {
        return keys(verdict).stream().map(key -> RecordKey.of(record.record(), key)).flatMap(Optional::stream).map(RecordKey::field)
            .flatMap(Optional::stream).anyMatch(field -> field.value().filter(quantity::equals).isPresent());
    }
}
