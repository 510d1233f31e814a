// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

import garboard.checks.Evaluation;
import garboard.checks.Gravity;
import garboard.checks.Remedy;
import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.CommissioningRecord;
import garboard.model.GeneratorSet;
import garboard.model.Party;
import garboard.model.PartyRole;
import garboard.model.Signature;
import garboard.model.SignatureRole;
import garboard.model.Vessel;

/** Who, what and when; the outcome; what to mend first; the lines to sign on. Everything an owner must see, on one page. */
final class SummarySheet {

    static final String NAME = "Summary";
    private static final int GRAVEST = 5;
    /** Lines that there is room for above the signatures, and the characters of one in either column of words. */
    private static final int GRAVEST_LINES = 13;
    private static final int GRAVEST_LINES_LETTER = 9;
    private static final int LINE_CHARACTERS = 46;

    private static final List<Standing> ONLY_WHERE_THERE_ARE = List.of(Standing.CHECK_BROKE, Standing.BORDERLINE, Standing.ACCEPTED);

    static final String STATEMENT = "This report sets measured and entered values beside stated practice. It certifies nothing and replaces "
        + "no survey, type approval or permit. Local codes and the trades licensed to work under them decide, whatever a line of it says.";

    private SummarySheet() {
    }

    static Optional<Sheet> of(Material material) {
        var blocks = new ArrayList<Block>();
        blocks.add(identity(material));
        blocks.add(new Block.Paragraph(Outcome.of(material.evaluation()), Block.Style.OUTCOME));
        if (!material.evaluation().practicesNotAtHand().isEmpty()) {
            blocks.add(Block.body("Not held against these practices, which the record asks for and this program does not have: "
                + String.join(", ", material.evaluation().practicesNotAtHand()) + "."));
        }
        blocks.add(counts(material.evaluation()));
        gravest(material, blocks);
        blocks.add(new Block.Heading("Signatures"));
        blocks.add(new Block.SignatureLines(STATEMENT, signatories(material)));
        return Optional.of(new Sheet(NAME, "Commissioning record", Orientation.PORTRAIT, blocks));
    }

    private static Block identity(Material material) {
        CommissioningRecord record = material.record();
        Optional<Vessel> vessel = Optional.ofNullable(record.getVessel());
        Optional<GeneratorSet> set = Optional.ofNullable(record.getGeneratorSet());
        return new Block.KeyValues(List.of(
            Block.Entry.of("Vessel", Material.orMissing(vessel.map(Vessel::getName).orElse(""))),
            Block.Entry.of("Identification", Material.orMissing(vessel.map(Vessel::getIdentification).orElse(""))),
            Block.Entry.of("Hull", hull(material)),
            Block.Entry.of("Generating set", Material.orMissing(set.map(SummarySheet::plate).orElse(""))),
            Block.Entry.of("Serial number", Material.orMissing(set.map(GeneratorSet::getSerialNumber).orElse(""))),
            Block.Entry.of("Rated", rating(material)),
            Block.Entry.of("Record", Material.orMissing(record.getTitle())),
            Block.Entry.of("Installed on", Material.orMissing(Material.orEmpty(set.map(GeneratorSet::getInstalledOn).orElse(null)))),
            Block.Entry.of("Installer", party(record, PartyRole.INSTALLER)),
            Block.Entry.of("Owner", party(record, PartyRole.OWNER)),
            Block.Entry.of("Surveyor", party(record, PartyRole.SURVEYOR)),
            Block.Entry.of("Checked on", material.evaluation().day().toString())));
    }

    private static String plate(GeneratorSet set) {
        return Stream.of(set.getMaker(), set.getType()).flatMap(text -> Material.present(text).stream()).collect(Collectors.joining(" "));
    }

    private static String hull(Material material) {
        Vessel vessel = material.record().getVessel();
        if (vessel == null) {
            return Material.orMissing("");
        }
        var words = new ArrayList<String>();
        if (vessel.eIsSet(garboard.model.GarboardPackage.Literals.VESSEL__HULL_KIND)) {
            words.add(material.labels().label(vessel.getHullKind()));
        }
        if (vessel.getLengthOverall() != null) {
            words.add("length " + vessel.getLengthOverall());
        }
        if (vessel.getBeam() != null) {
            words.add("beam " + vessel.getBeam());
        }
        return Material.orMissing(String.join(", ", words));
    }

    private static String rating(Material material) {
        GeneratorSet set = material.record().getGeneratorSet();
        if (set == null) {
            return Material.orMissing("");
        }
        return Material.orMissing(
            Stream.of(set.getRatedPower(), set.getRatedApparentPower(), set.getRatedVoltage(), set.getRatedFrequency(), set.getRatedSpeed())
                .filter(quantity -> quantity != null).map(Object::toString).collect(Collectors.joining(", ")));
    }

    private static String party(CommissioningRecord record, PartyRole role) {
        return Material.orMissing(record.getParties().stream().filter(party -> party.getRole() == role).map(SummarySheet::called)
            .filter(name -> !name.isEmpty()).collect(Collectors.joining("; ")));
    }

    private static String called(Party party) {
        return Stream.of(party.getName(), party.getOrganisation()).flatMap(text -> Material.present(text).stream())
            .collect(Collectors.joining(", "));
    }

    private static Table counts(Evaluation evaluation) {
        var table = Table.of(Table.standing(46), Table.number("people", "Danger to people", 34), Table.number("machine", "Danger to the machine", 34),
            Table.number("defect", "Defect", 24), Table.number("advice", "Advice", 22), Table.number("all", "All", 22));
        Expression all = Expression.column("people").plus(Expression.column("machine")).plus(Expression.column("defect"))
            .plus(Expression.column("advice"));
        for (Standing standing : Standing.values()) {
            if (ONLY_WHERE_THERE_ARE.contains(standing) && evaluation.count(standing) == 0) {
                continue;
            }
            table.row(new Cell.Stands(standing), count(evaluation, standing, Gravity.DANGER_TO_PEOPLE),
                count(evaluation, standing, Gravity.DANGER_TO_MACHINE), count(evaluation, standing, Gravity.DEFECT),
                count(evaluation, standing, Gravity.ADVICE), new Cell.Computed(all, 0, false));
        }
        table.total(Cell.strong("All checks"), sum("people"), sum("machine"), sum("defect"), sum("advice"), sum("all"));
        return table.build();
    }

    private static Cell sum(String column) {
        return new Cell.Computed(Expression.total(column), 0, false);
    }

    private static Cell count(Evaluation evaluation, Standing standing, Gravity gravity) {
        return Cell.count(evaluation.with(standing).stream().filter(verdict -> verdict.check().gravity() == gravity).count());
    }

    private static void gravest(Material material, List<Block> into) {
        List<Verdict> open = material.evaluation().worstFirst().stream()
            .filter(verdict -> verdict.standing().compareTo(Standing.BORDERLINE) <= 0).toList();
        if (open.isEmpty()) {
            return;
        }
        into.add(new Block.Heading("What to mend first"));
        var table = Table.of(Table.standing(22), Table.text("gravity", "Gravity", 24), Table.text("found", "Found", 68),
            Table.text("remedy", "What would make it meet", 68));
        int most = material.options().paper() == Paper.LETTER ? GRAVEST_LINES_LETTER : GRAVEST_LINES; // the sheet is shorter
        int told = 0;
        int lines = 0;
        for (Verdict verdict : open) {
            String found = Material.sentence(verdict) + " (" + verdict.check().id() + ")";
            String remedy = verdict.remedy().map(Remedy::text).orElse(verdict.check().remedyInWords());
            lines += Math.max(found.length(), remedy.length()) / LINE_CHARACTERS + 1;
            if (told == GRAVEST || told > 0 && lines > most) {
                break; // the signatures stay on the page
            }
            table.row(new Cell.Stands(verdict.standing()), Cell.text(verdict.check().gravity().label()), Cell.text(found), Cell.text(remedy));
            told++;
        }
        into.add(table.build());
        if (open.size() > told) {
            into.add(Block.note("And " + (open.size() - told) + " more: see the sheet " + ShortfallsSheet.NAME + "."));
        }
    }

    private static List<Block.Signatory> signatories(Material material) {
        CommissioningRecord record = material.record();
        var signatories = new ArrayList<Block.Signatory>();
        for (Signature signature : record.getSignatures()) {
            signatories.add(new Block.Signatory(material.labels().label(signature.getRole()), joined(signature.getName(), signature.getLicence()),
                joined(signature.getPlace(), Material.orEmpty(signature.getSignedOn())), Material.present(signature.getStatement()).orElse("")));
        }
        for (SignatureRole role : List.of(SignatureRole.INSTALLER, SignatureRole.OWNER, SignatureRole.SURVEYOR)) {
            if (record.getSignatures().stream().noneMatch(signature -> signature.getRole() == role)) {
                signatories.add(new Block.Signatory(material.labels().label(role), "", "", ""));
            }
        }
        return signatories;
    }

    private static String joined(String one, String other) {
        return Stream.of(one, other).flatMap(text -> Material.present(text).stream()).collect(Collectors.joining(", "));
    }
}
