// SPDX-License-Identifier: EPL-2.0
package garboard.session;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;

import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.checks.Catalogue;
import garboard.checks.Check;
import garboard.checks.Evaluation;
import garboard.checks.Evaluator;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.model.GarboardPackage.Literals;

/** The verdicts on an open record, kept up to date: after each edit those checks are judged anew that read what it touched. */
public final class LiveVerdicts {

    private final CommissioningRecord record;
    private final Evaluator evaluator;
    private final Clock clock;
    private final Listeners<Evaluation> listeners = new Listeners<>();
    private final Map<String, List<Verdict>> byCheck = new LinkedHashMap<>();
    private Evaluation evaluation;
    private final Map<Check<?>, FieldStandings.Inputs> inputs = new HashMap<>();
    private Optional<FieldStandings> byField = Optional.empty();

    LiveVerdicts(CommissioningRecord record, Catalogue catalogue, Clock clock) {
        this.record = record;
        this.evaluator = new Evaluator(catalogue);
        this.clock = clock;
        judgeAll();
    }

    /** {@return all verdicts as they stand} */
    public Evaluation evaluation() {
        return evaluation;
    }

    /** {@return the verdicts as they stand, by the fields that decide them} */
    public FieldStandings byField() {
        if (byField.isEmpty()) {
            byField = Optional.of(FieldStandings.of(evaluation, inputs));
        }
        return byField.get();
    }

    public Catalogue catalogue() {
        return evaluator.catalogue();
    }

    /** {@return the subscription of a listener that is told whenever verdicts may have changed} */
    public Listeners.Subscription onChange(Consumer<? super Evaluation> listener) {
        return listeners.add(listener);
    }

    /** Judges what an edit touched. */
    void follow(RecordChange change) {
        Set<EStructuralFeature> features = new HashSet<>(change.features());
        features.removeIf(feature -> feature == Literals.COMMISSIONING_RECORD__UNREAD_ENTRIES
            || feature.getEContainingClass() == Literals.UNREAD_ENTRY);
        if (features.isEmpty()) {
            return;
        }
        // What was judged yesterday may have run out today.
        if (change.structural() || features.contains(Literals.COMMISSIONING_RECORD__PRACTICES) || !evaluation.day().equals(today())) {
            judgeAll();
        } else {
            judge(features);
        }
        publish();
    }

    private void judge(Set<EStructuralFeature> edited) {
        Map<String, List<Verdict>> fresh = new HashMap<>();
        edited.forEach(feature -> evaluator.catalogue().readersOf(feature).forEach(check -> fresh.put(check.id(), new ArrayList<>())));
        evaluator.reevaluate(edited, record, evaluation.day()).forEach(verdict -> fresh.get(verdict.check().id()).add(verdict));
        // A check that the record's practices do not hold has no place here.
        fresh.keySet().retainAll(byCheck.keySet());
        byCheck.putAll(fresh);
        evaluation = new Evaluation(byCheck.values().stream().flatMap(List::stream).toList(), evaluation.practicesNotAtHand(), evaluation.day());
    }

    private void judgeAll() {
        evaluation = evaluator.evaluate(record, today());
        byCheck.clear();
        evaluator.catalogue().checksFor(record.getPractices()).forEach(check -> byCheck.put(check.id(), new ArrayList<>()));
        evaluation.verdicts().forEach(verdict -> byCheck.get(verdict.check().id()).add(verdict));
    }

    private void publish() {
        byField = Optional.empty();
        listeners.tell(evaluation);
    }

    private LocalDate today() {
        return LocalDate.now(clock);
    }
}
