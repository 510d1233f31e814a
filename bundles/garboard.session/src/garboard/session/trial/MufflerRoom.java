// SPDX-License-Identifier: EPL-2.0
package garboard.session.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import garboard.model.Answer;
import garboard.model.CommissioningRecord;
import garboard.model.ExhaustRun;
import garboard.model.ExhaustSectionRun;
import garboard.model.GarboardPackage.Literals;
import garboard.model.GeneratorSet;
import garboard.model.Muffler;
import garboard.model.RecordPath;
import garboard.model.WaterPump;
import garboard.physics.OutOfRangeException;
import garboard.physics.exhaust.CrankingFlood;
import garboard.physics.exhaust.DrainBack;
import garboard.physics.pipe.PipeRun;
import garboard.quantity.RotationalSpeed;
import garboard.quantity.Volume;
import garboard.quantity.VolumeFlow;

/**
 * The muffler as far as it takes water while the starter turns the pump, reckoned as the checks do: what runs back and stays in it after a stop
 * is in it already.
 *
 * @param flow flow of the raw-water pump at cranking speed
 * @param usable volume up to the inlet
 * @param standing what stands in it before anybody cranks, at most all of it
 * @param missing keys of the fields without which one of these is not known
 * @param wrong what is wrong with what is entered, in words
 */
public record MufflerRoom(Optional<VolumeFlow> flow, Optional<Volume> usable, Optional<Volume> standing, List<String> missing, Optional<String> wrong) {

    /** {@return the room left below the inlet} */
    public Optional<Volume> free() {
        return usable.flatMap(whole -> standing.map(taken -> Volume.of(whole.si() - taken.si())));
    }

    public static MufflerRoom of(CommissioningRecord record) {
        var missing = new ArrayList<String>();
        Optional<VolumeFlow> flow = Optional.empty();
        Optional<DrainBack> filling = Optional.empty();
        Optional<String> wrong = Optional.empty();
        try {
            flow = flow(record, missing);
            filling = filling(record, missing);
        } catch (OutOfRangeException nonsense) {
            wrong = Optional.of(nonsense.getMessage());
        }
        Optional<Volume> usable = Optional.ofNullable(record.getExhaust()).map(ExhaustRun::getMuffler).map(Muffler::getVolumeToInlet)
            .filter(volume -> volume.si() > 0);
        return new MufflerRoom(flow, usable, filling.map(MufflerRoom::standing), List.copyOf(missing), wrong);
    }

    private static Optional<VolumeFlow> flow(CommissioningRecord record, List<String> missing) {
        Optional<VolumeFlow> rated = Optional.ofNullable(record.getRawWater()).map(circuit -> circuit.getPump()).map(WaterPump::getRatedFlow);
        Optional<RotationalSpeed> speed = Optional.ofNullable(record.getGeneratorSet()).map(GeneratorSet::getRatedSpeed);
        Optional<RotationalSpeed> cranking = Optional.ofNullable(record.getGeneratorSet()).map(GeneratorSet::getCrankingSpeed);
        note(rated, "rawWater.pump.ratedFlow", missing);
        note(speed, "generatorSet.ratedSpeed", missing);
        note(cranking, "generatorSet.crankingSpeed", missing);
        return rated.isPresent() && speed.isPresent() && cranking.isPresent()
            ? Optional.of(CrankingFlood.flow(new CrankingFlood.PumpRating(rated.get(), speed.get()), cranking.get())) : Optional.empty();
    }

    private static Optional<DrainBack> filling(CommissioningRecord record, List<String> missing) {
        Optional<ExhaustRun> exhaust = Optional.ofNullable(record.getExhaust());
        Optional<Volume> volume = exhaust.map(ExhaustRun::getMuffler).map(Muffler::getVolumeToInlet);
        note(volume, "exhaust.muffler.volumeToInlet", missing);
        List<ExhaustSectionRun> sections = exhaust.<List<ExhaustSectionRun>>map(ExhaustRun::getSections).orElse(List.of());
        int lacking = missing.size();
        note(sections.stream().findFirst(), "exhaust.sections", missing);
        sections.forEach(section -> noteSection(section, missing));
        if (volume.isEmpty() || missing.size() > lacking) {
            return Optional.empty();
        }
        DrainBack filling = DrainBack.into(volume.get()).from(DrainBack.of(sections.stream().filter(MufflerRoom::slopesBack)
            .map(section -> PipeRun.ofBore(section.getBore()).withLength(section.getLength())).toList()));
        return Optional.of(Optional.ofNullable(exhaust.get().getMuffler().getResidueFraction()).map(filling::withResidue).orElse(filling));
    }

    private static void noteSection(ExhaustSectionRun section, List<String> missing) {
        if (section.getSlopesBackToMuffler() == Answer.UNANSWERED) {
            missing.add(RecordPath.key(section, Literals.EXHAUST_SECTION_RUN__SLOPES_BACK_TO_MUFFLER));
        }
        if (slopesBack(section)) {
            note(Optional.ofNullable(section.getBore()), RecordPath.key(section, Literals.EXHAUST_SECTION_RUN__BORE), missing);
            note(Optional.ofNullable(section.getLength()), RecordPath.key(section, Literals.EXHAUST_SECTION_RUN__LENGTH), missing);
        }
    }

    private static boolean slopesBack(ExhaustSectionRun section) {
        return section.getSlopesBackToMuffler() == Answer.YES;
    }

    private static void note(Optional<?> value, String key, List<String> missing) {
        if (value.isEmpty()) {
            missing.add(key);
        }
    }

    /** A muffler that runs over by itself is full, not more than full. */
    private static Volume standing(DrainBack filling) {
        return Volume.of(Math.min(filling.usable().si(), filling.usable().si() - filling.freeAfterStop().si()));
    }
}
