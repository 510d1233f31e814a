// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.time.Clock;
import java.time.LocalDate;
import java.util.Map;

import org.eclipse.emf.common.util.BasicDiagnostic;
import org.eclipse.emf.common.util.Diagnostic;
import org.eclipse.emf.common.util.DiagnosticChain;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EDataType;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EObjectValidator;

import garboard.model.CommissioningRecord;

/**
 * Hangs the checks into EMF validation: the one adapter between {@link Evaluator} and EMF's Diagnostician. Register it for
 * {@code GarboardPackage.eINSTANCE} in an {@link org.eclipse.emf.ecore.EValidator.Registry}. Structural rules stay with EMF.
 * <p>
 * Each verdict that is not a plain pass becomes a diagnostic: source is the check's id, code the standing's ordinal, data
 * the subject, the first feature concerned where one is missing, and the verdict.
 */
public final class PracticeValidator extends EObjectValidator {

    private final Evaluator evaluator;
    private final Clock clock;

    public PracticeValidator(Evaluator evaluator, Clock clock) {
        this.evaluator = evaluator;
        this.clock = clock;
    }

    @Override
    public boolean validate(EClass type, EObject object, DiagnosticChain diagnostics, Map<Object, Object> context) {
        boolean valid = super.validate(type, object, diagnostics, context);
        if (object instanceof CommissioningRecord record) {
            for (Verdict verdict : evaluator.evaluate(record, LocalDate.now(clock)).worstFirst()) {
                valid &= !verdict.needsAction();
                if (diagnostics != null && severity(verdict) != Diagnostic.OK) {
                    diagnostics.add(diagnostic(verdict));
                }
            }
        }
        return valid;
    }

    @Override
    public boolean validate(EDataType type, Object value, DiagnosticChain diagnostics, Map<Object, Object> context) {
        return super.validate(type, value, diagnostics, context);
    }

    private static Diagnostic diagnostic(Verdict verdict) {
        EStructuralFeature feature = verdict.missing().isEmpty() ? null : verdict.missing().getFirst().feature();
        Object[] data = feature == null ? new Object[] { verdict.subject(), verdict }
                : new Object[] { verdict.missing().getFirst().owner(), feature, verdict };
        return new BasicDiagnostic(severity(verdict), verdict.check().id(), verdict.standing().ordinal(),
                verdict.check().title() + ": " + verdict.sentence(), data);
    }

    private static int severity(Verdict verdict) {
        return switch (verdict.standing()) {
            case CHECK_BROKE -> Diagnostic.ERROR;
            case FALLS_SHORT -> verdict.check().gravity().compareTo(Gravity.DEFECT) < 0 ? Diagnostic.ERROR : Diagnostic.WARNING;
            case BORDERLINE, CANNOT_TELL -> Diagnostic.WARNING;
            case ACCEPTED -> Diagnostic.INFO;
            case MEETS, DOES_NOT_APPLY -> Diagnostic.OK;
        };
    }
}
