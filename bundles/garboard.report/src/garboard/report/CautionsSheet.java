// SPDX-License-Identifier: EPL-2.0
package garboard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.model.Answer;
import garboard.model.FuelKind;
import garboard.model.GeneratorSet;
import garboard.model.Vessel;

/** What can kill, before anything else is read. */
final class CautionsSheet {

    private record Caution(String lead, String text, boolean gasolineOnly) {
    }

    private static final List<Caution> CAUTIONS = List.of(
        new Caution("Carbon monoxide kills without smell or warning.",
            "Never run the set with people aboard unless carbon monoxide alarms are working in every space where people stay or sleep. "
                + "Keep everybody, swimmers above all, away from the exhaust outlet and from under the swim platform. Shut openings near "
                + "the outlet. Do not lie with the outlet against a quay, a wall or another boat. At an alarm, or with headache, "
                + "dizziness or nausea: everybody out into fresh air, stop the set, call for medical help.", false),
        new Caution("Petrol (gasoline) vapour in a closed space explodes.",
            "Before every start: open the compartment and use your nose down in the bilge, then run the blower for at least four minutes. "
                + "If there is any smell of petrol, start nothing and switch nothing; find the leak and air the space first. "
                + "Fit only parts that are ignition protected. Never fuel with the set running.", true),
        new Caution("Mains voltage kills.",
            "Only people licensed for it work on the alternating-current side. Stop the set, disconnect the starting battery and shore "
                + "power, lock the transfer switch, and prove that every conductor is dead before touching one. The set may start by "
                + "itself from a remote panel or an automatic control. Measure with instruments rated for the voltage.", false),
        new Caution("Running parts catch, hot parts burn.",
            "Keep hands, hair, clothes and tools clear of belts, pulleys and fans; guards stay on. Dry exhaust parts and the coolant stay "
                + "hot enough to burn long after stopping. Never open a pressure cap on a hot engine. Disconnect the battery before "
                + "working on the set.", false),
        new Caution("One hose can sink the boat.",
            "Everything below the heeled waterline holds the sea out. Shut the seacock when leaving the boat, and put a tag at the start "
                + "panel that it is shut. Replace doubtful hoses and clamps now, not next season. If the engine does not fire within a few "
                + "attempts, shut the seacock and drain the muffler before cranking on: water rises in the exhaust and goes back into the "
                + "cylinders.", false),
        new Caution("A battery can explode and spills acid.",
            "No flame or spark near a battery. Take off the negative cable first and put it back last. Wear eye protection. "
                + "Lift with help: blocks are heavy.", false));

    private CautionsSheet() {
    }

    static Optional<Sheet> of(Material material) {
        boolean noPetrol = dieselSet(material) && !petrolEngineAboard(material);
        var blocks = new ArrayList<Block>();
        blocks.add(Block.body("Read this page before working on the set, before starting it, and whenever somebody new comes aboard."));
        CAUTIONS.stream().filter(caution -> !(noPetrol && caution.gasolineOnly)).forEach(caution -> {
            blocks.add(new Block.Paragraph(caution.lead, Block.Style.CAUTION_LEAD));
            blocks.add(new Block.Paragraph(caution.text, Block.Style.CAUTION));
        });
        blocks.add(Block.body(SummarySheet.STATEMENT));
        return Optional.of(new Sheet("Cautions", "Cautions", Orientation.PORTRAIT, blocks));
    }

    private static boolean dieselSet(Material material) {
        GeneratorSet set = material.record().getGeneratorSet();
        return set != null && set.getFuel() == FuelKind.DIESEL;
    }

    private static boolean petrolEngineAboard(Material material) {
        Vessel vessel = material.record().getVessel();
        return vessel != null && vessel.getGasolineEngineAboard() == Answer.YES;
    }
}
