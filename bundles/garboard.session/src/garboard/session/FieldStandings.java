// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.checks.Check;
import garboard.checks.Evaluation;
import garboard.checks.Standing;
import garboard.checks.Verdict;

/** Which verdicts speak of which field: those of checks that read it, on a subject that the field can belong to. */
public final class FieldStandings {

    private static final Comparator<Verdict> WORST_FIRST = Comparator.comparing(Verdict::standing)
        .thenComparing(verdict -> verdict.check().gravity());

    private final Map<EStructuralFeature, List<Verdict>> byFeature = new HashMap<>();
    private final Map<EObject, List<Verdict>> bySubject = new HashMap<>();

    private FieldStandings(Evaluation evaluation, Map<Check<?>, Set<EStructuralFeature>> reads) {
        for (Verdict verdict : evaluation.verdicts()) {
            for (EStructuralFeature feature : reads.computeIfAbsent(verdict.check(), Check::reads)) {
                byFeature.computeIfAbsent(feature, none -> new ArrayList<>()).add(verdict);
            }
            for (EObject part = verdict.subject(); part != null; part = part.eContainer()) {
                bySubject.computeIfAbsent(part, none -> new ArrayList<>()).add(verdict);
            }
        }
    }

    /** @param reads what each check reads, as far as that was asked before: it is gathered anew each time, which takes longer than all else here */
    static FieldStandings of(Evaluation evaluation, Map<Check<?>, Set<EStructuralFeature>> reads) {
        return new FieldStandings(evaluation, reads);
    }

    /**
     * {@return the verdicts that what is entered in a field decides, worst first} A check that lacks something is among those of the
     * fields that it lacks, not of the fields that it has.
     */
    public List<Verdict> concerning(Field field) {
        List<Verdict> readers = byFeature.getOrDefault(field.attribute(), List.of());
        if (readers.isEmpty()) {
            return List.of();
        }
        String key = field.key();
        boolean empty = field.value().isEmpty();
        return readers.stream().filter(verdict -> canBelongTo(field, verdict.subject()))
            .filter(verdict -> verdict.standing() != Standing.CANNOT_TELL || empty && isMissing(key, verdict)).sorted(WORST_FIRST).toList();
    }

    /**
     * {@return those of the verdicts concerning a field that are for this field to mend, worst first} A check on the raw-water intake reads
     * the vessel's speed, but a shortfall there is no reproach to the speed: only the verdicts on what is entered at the field's own stop
     * count, and those that lack the field.
     */
    public List<Verdict> at(Field field) {
        Stop here = Stop.of(field.key());
        return concerning(field).stream().filter(verdict -> verdict.standing() == Standing.CANNOT_TELL || verdict.subjectKey().isEmpty()
            || Stop.of(verdict.subjectKey()) == here).toList();
    }

    /** {@return the worst standing of the verdicts at a field; nothing where there is none} */
    public Optional<Standing> worst(Field field) {
        return at(field).stream().findFirst().map(Verdict::standing).filter(standing -> standing != Standing.DOES_NOT_APPLY);
    }

    /**
     * {@return whether a field need not be filled in for this installation} That is so when checks read it and none of them applies, as
     * with the answers on a gasoline set when it burns diesel. A field that no check reads is none of them: it may be wanted for the record.
     */
    public boolean isBeside(Field field) {
        List<Verdict> readers = byFeature.getOrDefault(field.attribute(), List.of()).stream()
            .filter(verdict -> canBelongTo(field, verdict.subject())).toList();
        return !readers.isEmpty() && readers.stream().allMatch(verdict -> verdict.standing() == Standing.DOES_NOT_APPLY);
    }

    /** {@return the worst standing among the verdicts on a part and all below it; nothing where no check speaks of it} */
    public Optional<Standing> worstOf(EObject part) {
        return bySubject.getOrDefault(part, List.of()).stream().filter(verdict -> verdict.standing() != Standing.DOES_NOT_APPLY)
            .min(WORST_FIRST).map(Verdict::standing);
    }

    private static boolean isMissing(String key, Verdict verdict) {
        return verdict.missing().stream().anyMatch(missing -> key.equals(missing.key()) || key.startsWith(missing.key() + "."));
    }

    /** Not when the field is one of a sibling of the subject, or of another part of the same class. */
    private static boolean canBelongTo(Field field, EObject subject) {
        EObject place = field.nearest();
        if (place != subject && place.eClass() == subject.eClass()) {
            return false;
        }
        for (EObject above = place; above.eContainer() != null; above = above.eContainer()) {
            for (EObject other = subject; other.eContainer() != null; other = other.eContainer()) {
                if (above != other && above.eContainmentFeature().isMany() && above.eContainmentFeature() == other.eContainmentFeature()
                        && above.eContainer() == other.eContainer()) {
                    return false;
                }
            }
        }
        return true;
    }
}
