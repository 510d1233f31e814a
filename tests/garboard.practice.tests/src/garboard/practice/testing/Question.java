// SPDX-License-Identifier: EPL-2.0
package garboard.practice.testing;

import static garboard.practice.testing.Judged.judge;

import java.util.function.Consumer;
import java.util.function.Function;

import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

import garboard.checks.Check;
import garboard.model.Answer;
import garboard.model.CommissioningRecord;

/** What every check of a plain question has to do: one answer meets, the other falls short, none cannot tell, not applicable is respected. */
public final class Question {

    private final Check<?> check;
    private final EStructuralFeature feature;
    private Function<CommissioningRecord, ? extends EObject> owner = record -> record;
    private Consumer<CommissioningRecord> installation = record -> { };

    private Question(Check<?> check, EStructuralFeature feature) {
        this.check = check;
        this.feature = feature;
    }

    public static Question of(Check<?> check, EStructuralFeature feature) {
        return new Question(check, feature);
    }

    /** Where in the record the answer stands. */
    public Question at(Function<CommissioningRecord, ? extends EObject> place) {
        this.owner = place;
        return this;
    }

    /** What else has to be entered for the check to apply. */
    public Question in(Consumer<CommissioningRecord> entered) {
        this.installation = entered;
        return this;
    }

    public void wants(Answer good, String key) {
        answersTell(good, key);
        judge(check, answered(Answer.NOT_APPLICABLE)).doesNotApply();
    }

    /** The same for a law: where it applies, marking its question as not applicable is no answer. */
    public void demands(Answer good, String key) {
        answersTell(good, key);
        judge(check, answered(Answer.NOT_APPLICABLE)).fallsShort();
    }

    private void answersTell(Answer good, String key) {
        Answer bad = good == Answer.YES ? Answer.NO : Answer.YES;
        judge(check, answered(good)).meets();
        judge(check, answered(bad)).fallsShort();
        judge(check, answered(Answer.UNANSWERED)).cannotTell(key);
    }

    private CommissioningRecord answered(Answer answer) {
        CommissioningRecord record = Installation.empty();
        installation.accept(record);
        owner.apply(record).eSet(feature, answer);
        return record;
    }
}
