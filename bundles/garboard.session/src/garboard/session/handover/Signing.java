// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.util.List;
import java.util.Optional;

import garboard.checks.Evaluation;
import garboard.checks.Verdict;
import garboard.model.GarboardFactory;
import garboard.model.GarboardPackage.Literals;
import garboard.model.Signature;
import garboard.model.StoredVerdict;
import garboard.report.VerdictOfTheDay;
import garboard.session.OpenRecord;

/** Signing a record, and taking that back. A signature is a name, a statement and the verdicts of the day; it proves nothing about who typed it. */
public final class Signing {

    private Signing() {
    }

    /**
     * Signs. A line that was prepared for this role and name, or for the role alone, is filled in; else a signature is added.
     *
     * @param statement the whole statement, with what the person added
     * @param label what the step is called in "Undo ..."
     * @return the signature in the record
     * @throws IllegalStateException when a check broke
     */
    public static Signature sign(OpenRecord open, Signatory signatory, String statement, String label) {
        Evaluation evaluation = open.verdicts().evaluation();
        if (evaluation.checkBroke()) {
            throw new IllegalStateException("Nobody signs what a broken check could not judge");
        }
        Signature signature = signature(signatory, statement, evaluation);
        Optional<Signature> prepared = prepared(open, signatory);
        open.edits().together(label, () -> {
            if (prepared.isPresent()) {
                int index = open.record().getSignatures().indexOf(prepared.get());
                open.edits().remove(List.of(prepared.get()), label);
                open.edits().insert(open.record(), Literals.COMMISSIONING_RECORD__SIGNATURES, index, signature, label);
            } else {
                open.edits().add(open.record(), List.of(Literals.COMMISSIONING_RECORD__SIGNATURES), signature, label);
            }
        });
        return signature;
    }

    private static Optional<Signature> prepared(OpenRecord open, Signatory signatory) {
        List<Signature> lines = open.record().getSignatures().stream().filter(line -> !isSigned(line) && line.getRole() == signatory.role()).toList();
        return lines.stream().filter(line -> signatory.name().equalsIgnoreCase(line.getName())).findFirst()
            .or(() -> lines.stream().filter(line -> line.getName() == null || line.getName().isBlank()).findFirst());
    }

    private static Signature signature(Signatory signatory, String statement, Evaluation evaluation) {
        Signature signature = GarboardFactory.eINSTANCE.createSignature();
        signature.setRole(signatory.role());
        signature.setName(signatory.name());
        if (!signatory.licence().isEmpty()) {
            signature.setLicence(signatory.licence());
        }
        if (!signatory.place().isEmpty()) {
            signature.setPlace(signatory.place());
        }
        signature.setSignedOn(signatory.on());
        signature.setStatement(statement);
        evaluation.verdicts().stream().map(Signing::stored).forEach(signature.getVerdicts()::add);
        return signature;
    }

    /** In the words and figures in which the workbook keeps the verdicts of the day. */
    private static StoredVerdict stored(Verdict verdict) {
        VerdictOfTheDay told = VerdictOfTheDay.of(verdict);
        StoredVerdict stored = GarboardFactory.eINSTANCE.createStoredVerdict();
        stored.setCheck(told.check());
        stored.setSubject(told.subject());
        stored.setStanding(told.standing());
        if (!told.measured().isEmpty()) {
            stored.setMeasured(told.measured());
        }
        if (!told.limit().isEmpty()) {
            stored.setLimit(told.limit());
        }
        if (!told.margin().isEmpty()) {
            stored.setMargin(told.margin());
        }
        return stored;
    }

    /** Takes a signature back: nothing of it stays, and undo brings it back with its verdicts. */
    public static void takeBack(OpenRecord open, Signature signature, String label) {
        open.edits().remove(List.of(signature), label);
    }

    /** {@return whether somebody signed, or a line only waits for it} */
    public static boolean isSigned(Signature signature) {
        return signature.getSignedOn() != null;
    }
}
