// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.model.CommissioningRecord;
import garboard.model.Labels;

/**
 * Holds records against a catalogue. Reads the record only; safe for use by several threads as long as each has a record
 * of its own.
 */
public final class Evaluator {

    private final Catalogue catalogue;
    private final Containment containment = new Containment();
    private final Judge judge;

    /** Names places in English. */
    public Evaluator(Catalogue catalogue) {
        this(catalogue, Labels.in(Locale.ENGLISH));
    }

    /** @param labels how places in the record are named to people */
    public Evaluator(Catalogue catalogue, Labels labels) {
        this.catalogue = catalogue;
        this.judge = new Judge(containment, labels);
    }

    public Catalogue catalogue() {
        return catalogue;
    }

    /** All verdicts on a record, in the catalogue's order. */
    public Evaluation evaluate(CommissioningRecord record, LocalDate today) {
        var objects = new Objects(record);
        var verdicts = new ArrayList<Verdict>();
        for (Check<?> check : catalogue.checksFor(record.getPractices())) {
            evaluate(check, objects, record, today, verdicts);
        }
        return new Evaluation(verdicts, catalogue.notAtHand(record.getPractices()), today);
    }

    /** The verdicts of one check on all its subjects. */
    public List<Verdict> evaluate(Check<?> check, CommissioningRecord record, LocalDate today) {
        var verdicts = new ArrayList<Verdict>();
        evaluate(check, new Objects(record), record, today, verdicts);
        return verdicts;
    }

    /** The verdicts that an edit of this feature can change, judged anew; all others stand. */
    public List<Verdict> reevaluate(EStructuralFeature edited, CommissioningRecord record, LocalDate today) {
        return reevaluate(List.of(edited), record, today);
    }

    /** The verdicts that an edit of any of these features can change, each judged anew once; all others stand. */
    public List<Verdict> reevaluate(Collection<? extends EStructuralFeature> edited, CommissioningRecord record, LocalDate today) {
        Set<Check<?>> readers = new HashSet<>();
        edited.forEach(feature -> readers.addAll(catalogue.readersOf(feature)));
        var objects = new Objects(record);
        var verdicts = new ArrayList<Verdict>();
        for (Check<?> check : catalogue.checksFor(record.getPractices())) {
            if (readers.contains(check)) {
                evaluate(check, objects, record, today, verdicts);
            }
        }
        return verdicts;
    }

    private void evaluate(Check<?> check, Objects objects, CommissioningRecord record, LocalDate today,
            List<Verdict> into) {
        List<EObject> ofType = objects.of(check.subjectType());
        if (ofType.isEmpty()) {
            into.add(judge.subjectNotEntered(check, missingSubject(check.subjectType(), record), record, today));
            return;
        }
        for (EObject object : ofType) {
            Verdict verdict = judged(check, object, record, today);
            if (verdict != null) {
                into.add(Acceptances.lay(verdict, record, today));
            }
        }
    }

    private Verdict judged(Check<?> check, EObject object, CommissioningRecord record, LocalDate today) {
        try {
            return check.judges(object) ? judge.judge(check, object, record, today) : null;
        } catch (RuntimeException fault) {
            // Choosing the subjects is part of the check: a fault in it is shown like any other.
            return judge.broke(check, object, fault);
        }
    }

    /** The first part not entered on the way to the subject's class. */
    private Missing missingSubject(EClass type, CommissioningRecord record) {
        List<EReference> chain = containment.to(type).getFirst().references();
        EObject owner = record;
        int index = 0;
        while (!chain.get(index).isMany() && owner.eIsSet(chain.get(index)) && index < chain.size() - 1) {
            owner = (EObject) owner.eGet(chain.get(index));
            index++;
        }
        return judge.missingPart(owner, chain.subList(index, chain.size()));
    }

    /** The record's objects by class, collected once for all checks. */
    private static final class Objects {
        private final Map<EClass, List<EObject>> byType = new LinkedHashMap<>();

        Objects(CommissioningRecord record) {
            add(record);
            record.eAllContents().forEachRemaining(this::add);
        }

        private void add(EObject object) {
            byType.computeIfAbsent(object.eClass(), key -> new ArrayList<>()).add(object);
        }

        List<EObject> of(EClass type) {
            return byType.getOrDefault(type, List.of());
        }
    }
}
