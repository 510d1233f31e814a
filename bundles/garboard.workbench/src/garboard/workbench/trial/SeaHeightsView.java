// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.trial;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import org.eclipse.swt.widgets.Composite;

import garboard.checks.Standing;
import garboard.model.Answer;
import garboard.model.SeaRun;
import garboard.model.Trial;
import garboard.model.Vessel;
import garboard.physics.geometry.Attitude;
import garboard.physics.geometry.HeeledHeight;
import garboard.quantity.Angle;
import garboard.quantity.Length;
import garboard.quantity.UnitSystem;
import garboard.report.Figures;
import garboard.session.OpenRecord;
import garboard.session.trial.SeaHeight;
import garboard.session.trial.SeaReach;
import garboard.workbench.Desk;
import garboard.workbench.text.Texts;

/** How high siphon break, crest and outlet stood above the water in the attitudes of the run, in words, and what the run says nothing about. */
final class SeaHeightsView implements View {

    private static final double MILLIMETRE = 0.001;
    private static final double TENTH_OF_AN_INCH = 0.00254;

    private final OpenRecord record;
    private final Desk desk;
    private final Texts.Of texts;
    private final Said danger;
    private final Map<SeaHeight.Part, MarkLine> lines = new EnumMap<>(SeaHeight.Part.class);
    private final Map<SeaHeight.Part, Leading> missing = new EnumMap<>(SeaHeight.Part.class);
    private final Said contradiction;
    private final Said reach;
    private final Said sinkage;

    SeaHeightsView(Composite parent, OpenRecord record, Desk desk) {
        this.record = record;
        this.desk = desk;
        this.texts = desk.texts(SeaHeightsView.class);
        danger = new Said(parent, desk, Tone.DANGER);
        for (SeaHeight.Part part : SeaHeight.Part.values()) {
            var line = new MarkLine(parent, desk);
            line.setData("garboard.id", "sea." + part.name());
            lines.put(part, line);
            missing.put(part, Leading.toPlaces(parent, desk));
        }
        contradiction = new Said(parent, desk, Tone.WARNING);
        reach = new Said(parent, desk, Tone.PLAIN);
        sinkage = new Said(parent, desk, Tone.QUIET);
        show();
    }

    @Override
    public void show() {
        List<SeaHeight> heights = SeaHeight.of(record.record());
        heights.forEach(this::show);
        danger.say(danger());
        boolean outletUnder = heights.stream().anyMatch(height -> height.part() == SeaHeight.Part.OUTLET
            && height.lowest().filter(low -> low.height().si() < 0).isPresent());
        contradiction.say(outletUnder && run().map(SeaRun::getWaterOverCrest).orElse(Answer.UNANSWERED) == Answer.UNANSWERED
            ? texts.get("sea.contradicts") : "");
        reach.say(String.join("\n", reaches()));
        boolean any = heights.stream().anyMatch(height -> height.lowest().isPresent());
        sinkage.say(Optional.ofNullable(record.record().getVessel()).map(Vessel::getSinkage).filter(rise -> any && rise.si() > 0)
            .map(rise -> texts.get("sea.sinkage", rise)).orElse(""));
    }

    private Optional<SeaRun> run() {
        return Optional.ofNullable(record.record().getTrial()).map(Trial::getSeaRun);
    }

    private String danger() {
        var words = new ArrayList<String>();
        run().filter(run -> run.getWaterFlowing() == Answer.NO).ifPresent(run -> words.add(texts.get("sea.noFlow")));
        run().filter(run -> run.getWaterOverCrest() == Answer.YES).ifPresent(run -> words.add(texts.get("sea.overCrest")));
        run().filter(run -> run.getWaterInMuffler() == Answer.YES).ifPresent(run -> words.add(texts.get("sea.inMuffler")));
        return String.join("\n", words);
    }

    private void show(SeaHeight height) {
        String rest = height.atRest().map(at -> texts.get("sea.atRest", level(at))).orElse("");
        String lowest = height.lowest().map(low -> texts.get("sea.worst", level(low.height()), attitude(low.attitude()))).orElse("");
        Optional<Length> wanted = height.wanted(record.verdicts().evaluation()).filter(least -> least.si() > 0);
        boolean close = height.lowest().isPresent() && wanted.filter(height.lowest().get().height()::isLessThan).isPresent();
        String words = !lowest.isEmpty() ? (close ? texts.get("sea.close", lowest, length(wanted.get())) : lowest) + "; " + rest
            : height.missing().isEmpty() ? rest + "; " + texts.get("sea.noAngle") : rest;
        lines.get(height.part()).show(texts.get("sea." + height.part().name()), standing(height, close), words);
        missing.get(height.part()).say(height.missing().isEmpty() ? ""
            : texts.get("sea.missing", Leading.to(height.missing().getFirst(), Places.name(desk, height.part().key()))));
    }

    /** What was seen is held against the water, and against what the check asks for at the attitude to design for. */
    private static Standing standing(SeaHeight height, boolean close) {
        boolean outlet = height.part() == SeaHeight.Part.OUTLET;
        return height.lowest().map(low -> low.height().si() < 0 ? outlet ? Standing.BORDERLINE : Standing.FALLS_SHORT
            : close ? Standing.BORDERLINE : Standing.MEETS).orElse(Standing.CANNOT_TELL);
    }

    private String level(Length height) {
        return texts.get(height.si() < 0 ? "sea.under" : "sea.above", length(height));
    }

    /** Nobody reads a height above moving water closer than a millimetre or a tenth of an inch. */
    private String length(Length height) {
        double step = desk.settings().units() == UnitSystem.SI ? MILLIMETRE : TENTH_OF_AN_INCH;
        return Figures.in(desk.settings().units()).text(Length.of(Math.rint(Math.abs(height.si()) / step) * step));
    }

    private String attitude(Attitude attitude) {
        String heel = attitude.heel().si() == 0 ? texts.get("sea.attitude.upright")
            : texts.get(attitude.heel().si() > 0 ? "sea.heel.starboard" : "sea.heel.port", degrees(attitude.heel()));
        String trim = attitude.trim().si() == 0 ? texts.get("sea.attitude.level")
            : texts.get(attitude.trim().si() > 0 ? "sea.trim.up" : "sea.trim.down", degrees(attitude.trim()));
        return heel + ", " + trim;
    }

    private String degrees(Angle angle) {
        return Figures.in(desk.settings().units()).text(Angle.of(Math.abs(angle.si())), "deg");
    }

    private List<String> reaches() {
        var words = new ArrayList<String>();
        SeaReach.ofHeel(record.record()).ifPresent(found -> words.add(reach("heel", found)));
        SeaReach.ofTrim(record.record()).ifPresent(found -> words.add(reach("trim", found)));
        return words;
    }

    private String reach(String what, SeaReach found) {
        return texts.get("sea.reach." + what + (found.reached() ? "" : ".short"), degrees(found.seen()), degrees(found.design()));
    }
}
