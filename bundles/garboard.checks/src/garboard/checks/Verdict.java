// SPDX-License-Identifier: EPL-2.0
package garboard.checks;

import java.util.List;
import java.util.Objects;
import java.util.Optional;

import org.eclipse.emf.ecore.EObject;

import garboard.quantity.Quantity;

/**
 * What one check says of one subject.
 *
 * @param check the check
 * @param subject the object judged; the nearest existing owner when the subject itself is not entered
 * @param subjectKey stable key of the subject in the record
 * @param subjectLabel the subject in words
 * @param standing the verdict
 * @param sentence what was found, why it does not apply, or what went wrong, in one sentence
 * @param measured the measured or computed value, where there is one
 * @param limit the limit used, where there is one
 * @param margin signed distance from the limit, where there is one
 * @param remedy what would make it meet, for a shortfall
 * @param missing what is not entered, for {@link Standing#CANNOT_TELL}
 * @param acceptance who accepted the shortfall and why, or a note on an acceptance that does not count
 * @param broke the exception, for {@link Standing#CHECK_BROKE}
 */
public record Verdict(Check<?> check, EObject subject, String subjectKey, String subjectLabel, Standing standing,
        String sentence, Optional<Quantity<?>> measured, Optional<Limit<?>> limit, Optional<Margin> margin,
        Optional<Remedy> remedy, List<Missing> missing, Optional<String> acceptance, Optional<RuntimeException> broke) {

    public Verdict {
        Objects.requireNonNull(check, "check");
        Objects.requireNonNull(standing, "standing");
        Objects.requireNonNull(sentence, "sentence");
        missing = List.copyOf(missing);
    }

    /** Whether a person must do something about it: falls short, borderline with danger to people, or check broke. */
    public boolean needsAction() {
        return standing == Standing.FALLS_SHORT || standing == Standing.CHECK_BROKE
                || standing == Standing.BORDERLINE && check.gravity() == Gravity.DANGER_TO_PEOPLE;
    }

    Verdict withAcceptance(Standing newStanding, String note) {
        return new Verdict(check, subject, subjectKey, subjectLabel, newStanding, sentence, measured, limit, margin,
                remedy, missing, Optional.of(note), broke);
    }
}
