// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import garboard.model.AlarmDevice;
import garboard.model.Answer;
import garboard.model.Entered;
import garboard.model.GarboardPackage.Literals;
import garboard.model.LoadStep;
import garboard.model.RecordPath;
import garboard.model.SeaRun;
import garboard.model.TestResult;
import garboard.model.Trial;
import garboard.session.OpenRecord;
import garboard.session.handover.OpenPoint.Matter;
import garboard.session.handover.OpenPoint.Topic;
import garboard.session.trial.LoadLadder;
import garboard.session.trial.StartLine;
import garboard.session.trial.StartProcedure;
import garboard.session.trial.StepReview;

/** Which parts of the trial were not done, or did not go well. */
final class TrialPoints {

    private final OpenRecord open;
    private final Trial trial;
    private final List<OpenPoint> points = new ArrayList<>();

    private TrialPoints(OpenRecord open, Trial trial) {
        this.open = open;
        this.trial = trial;
    }

    static List<OpenPoint> of(OpenRecord open, Clock clock) {
        Optional<Trial> trial = Optional.ofNullable(open.record().getTrial()).filter(Entered::anythingIn);
        if (trial.isEmpty()) {
            return List.of(OpenPoint.of(Topic.TRIAL, Matter.NO_TRIAL, "trial.date"));
        }
        var points = new TrialPoints(open, trial.get());
        points.addOccasion();
        points.addStart(clock);
        points.addLoads();
        points.addShutdowns();
        points.addLeaks();
        points.addSeaRun();
        return points.points;
    }

    private void add(Matter matter, String place, String... facts) {
        points.add(OpenPoint.of(Topic.TRIAL, matter, place, facts));
    }

    private void addOccasion() {
        for (var field : List.of(Literals.TRIAL__DATE, Literals.TRIAL__PLACE, Literals.TRIAL__PEOPLE, Literals.TRIAL__CARBON_MONOXIDE_CABIN)) {
            if (!trial.eIsSet(field)) {
                add(Matter.NOT_ENTERED, RecordPath.key(trial, field));
            }
        }
    }

    private void addStart(Clock clock) {
        List<StartLine> lines = new StartProcedure(open, clock, step -> "").lines().stream().filter(line -> line.concern().holds()).toList();
        long openLines = lines.stream().filter(StartLine::open).count();
        if (openLines > 0) {
            add(Matter.STEPS_OPEN, "trial.procedure", String.valueOf(openLines), String.valueOf(lines.size()));
        }
        if (trial.getAttempts().stream().noneMatch(attempt -> attempt.getFired() == Answer.YES)) {
            add(Matter.NO_START, "trial.attempts");
        }
    }

    private void addLoads() {
        List<LoadLadder.Rung> missing = LoadLadder.missing(open.record());
        if (!missing.isEmpty()) {
            add(Matter.LOADS_MISSING, "trial.loadSteps", missing.stream().map(rung -> rung.load().toString()).collect(Collectors.joining(", ")));
        }
        for (LoadStep step : trial.getLoadSteps()) {
            if (StepReview.of(step).lacks().contains(StepReview.Lack.READINGS)) {
                add(Matter.LOAD_WITHOUT_READINGS, RecordPath.key(step), Optional.ofNullable(step.getLoad()).map(Object::toString).orElse(""));
            }
        }
    }

    private void addShutdowns() {
        if (trial.getShutdownTests().isEmpty()) {
            add(Matter.NO_SHUTDOWN_TESTS, "trial.shutdownTests");
        }
        for (AlarmDevice test : trial.getShutdownTests()) {
            if (test.getTestResult() != TestResult.PASSED) {
                add(Matter.SHUTDOWN_NOT_PASSED, RecordPath.key(test, Literals.ALARM_DEVICE__TEST_RESULT),
                    test.eIsSet(Literals.ALARM_DEVICE__KIND) ? test.getKind().name() : "", test.getTestResult().name());
            }
        }
    }

    private void addLeaks() {
        addLeaks(trial.getLeaksCold(), "trial.leaksCold");
        addLeaks(trial.getLeaksHot(), "trial.leaksHot");
        Optional.ofNullable(trial.getPriming()).ifPresent(priming -> {
            if (priming.getLeaks() == Answer.YES) {
                add(Matter.LEAKS, "trial.priming.leaks");
            }
        });
    }

    private void addLeaks(Answer found, String place) {
        if (found == Answer.YES) {
            add(Matter.LEAKS, place);
        } else if (found == Answer.UNANSWERED) {
            add(Matter.NOT_ENTERED, place);
        }
    }

    private void addSeaRun() {
        Optional<SeaRun> run = Optional.ofNullable(trial.getSeaRun()).filter(Entered::anythingIn);
        if (run.isEmpty()) {
            add(Matter.NO_SEA_RUN, "trial.seaRun.date");
            return;
        }
        if (run.get().getWaterFlowing() == Answer.NO) {
            add(Matter.SEA_RUN_WATER_STOPPED, "trial.seaRun.waterFlowing");
        } else if (run.get().getWaterFlowing() == Answer.UNANSWERED) {
            add(Matter.NOT_ENTERED, "trial.seaRun.waterFlowing");
        }
        if (run.get().getWaterOverCrest() == Answer.YES) {
            add(Matter.SEA_RUN_WATER_CAME_IN, "trial.seaRun.waterOverCrest");
        }
        if (run.get().getWaterInMuffler() == Answer.YES) {
            add(Matter.SEA_RUN_WATER_CAME_IN, "trial.seaRun.waterInMuffler");
        }
    }
}
