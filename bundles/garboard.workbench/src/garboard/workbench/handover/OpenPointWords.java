// SPDX-License-Identifier: EPL-2.0
package garboard.workbench.handover;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

import garboard.checks.Standing;
import garboard.checks.Verdict;
import garboard.model.AlarmKind;
import garboard.model.Labels;
import garboard.model.TestResult;
import garboard.session.OpenRecord;
import garboard.session.RecordKey;
import garboard.session.Stop;
import garboard.session.handover.OpenPoint;
import garboard.session.handover.OpenPoint.Topic;
import garboard.session.handover.SignOff;
import garboard.workbench.Desk;
import garboard.workbench.page.StopWords;
import garboard.workbench.text.Texts;

/** What stands in the way of a signature, in sentences. What the checks say themselves is English. */
final class OpenPointWords {

    private final Desk desk;
    private final OpenRecord record;
    private final Texts.Of texts;

    OpenPointWords(OpenRecord record, Desk desk) {
        this.desk = desk;
        this.record = record;
        this.texts = desk.texts(OpenPointWords.class);
    }

    /** {@return the sentence} */
    String sentence(OpenPoint point) {
        Object[] facts = point.facts().toArray();
        return switch (point.matter()) {
            case VERDICT -> verdict(point.topic(), point.verdict().orElseThrow());
            case UNTOLD -> texts.get(point.topic() == Topic.DANGER ? "point.untold.danger" : "point.untold",
                StopWords.of(desk, Stop.valueOf(point.facts().getFirst())), Integer.valueOf(point.facts().get(1)));
            case LOAD_WITHOUT_READINGS -> point.facts().getFirst().isEmpty() ? texts.get("point.loadWithoutReadings")
                : texts.get("point.loadWithoutReadings.of", facts);
            case SHUTDOWN_NOT_PASSED -> shutdown(point.facts().getFirst(), TestResult.valueOf(point.facts().getLast()));
            case DAYS_CROSSED -> texts.get("point.DAYS_CROSSED", point.facts().get(0), place(point.facts().get(2)), point.facts().get(1));
            case QUESTION_OPEN, FINDING_WITHOUT_PICTURE -> {
                String key = "point." + point.matter().name();
                yield texts.get(key, question(point.facts().getFirst()));
            }
            default -> {
                String key = "point." + point.matter().name();
                yield texts.get(key, facts);
            }
        };
    }

    private String question(String asked) {
        return asked.isBlank() ? texts.get("point.question.none") : asked;
    }

    private String shutdown(String kind, TestResult result) {
        Labels labels = desk.labels();
        String called = kind.isEmpty() ? texts.get("point.shutdown.unnamed") : labels.label(AlarmKind.valueOf(kind));
        return texts.get(result == TestResult.FAILED ? "point.shutdown.failed" : "point.shutdown.notTested", called);
    }

    private String verdict(Topic topic, Verdict verdict) {
        String title = verdict.check().title();
        if (verdict.standing() == Standing.CANNOT_TELL && !verdict.missing().isEmpty()) {
            int missing = verdict.missing().size();
            return missing == 1 ? texts.get("point.cannotTell", title) : texts.get("point.cannotTell.several", title, missing);
        }
        String standing = texts.get("standing." + verdict.standing().name());
        if (verdict.standing() == Standing.ACCEPTED) {
            return texts.get("point.accepted", title, verdict.acceptance().orElse(""), verdict.sentence());
        }
        String said = topic == Topic.SHORTFALLS
            ? texts.get("point.verdict.gravity", title, standing, verdict.sentence(), texts.get("gravity." + verdict.check().gravity().name()))
            : texts.get("point.verdict", title, standing, verdict.sentence());
        Optional<String> refused = verdict.acceptance();
        return refused.map(why -> said + " " + why + ".").orElse(said);
    }

    /** {@return where it is mended} */
    String place(OpenPoint point) {
        return point.place().map(this::place).orElse("");
    }

    private String place(String key) {
        return RecordKey.of(record.record(), key).map(found -> found.words(desk.labels())).orElse(key);
    }

    /** {@return the standing whose mark stands before it; none for what is only to be known} */
    Optional<Standing> mark(OpenPoint point) {
        return point.verdict().map(Verdict::standing).or(() -> switch (point.matter()) {
            case UNREAD, DAYS_CROSSED, FUTURE_DAY, LEAKS, SEA_RUN_WATER_CAME_IN, SEA_RUN_WATER_STOPPED, IMPELLER_PIECES ->
                Optional.of(Standing.FALLS_SHORT);
            case SHUTDOWN_NOT_PASSED ->
                Optional.of(point.facts().getLast().equals(TestResult.FAILED.name()) ? Standing.FALLS_SHORT : Standing.CANNOT_TELL);
            default -> point.topic().hinders() || point.matter() == OpenPoint.Matter.UNTOLD ? Optional.of(Standing.CANNOT_TELL) : Optional.empty();
        });
    }

    /** {@return the heading of a topic, with how much there is} */
    String heading(Topic topic, int count) {
        String key = "topic." + topic.name();
        return texts.get("topic.counted", texts.get(key), count);
    }

    /** {@return what a topic is about} */
    String about(Topic topic) {
        String key = "topic.about." + topic.name();
        return texts.get(key);
    }

    /** {@return what is open, counted, as part of a sentence} */
    String counts(SignOff signOff) {
        List<String> parts = new ArrayList<>();
        for (Topic topic : signOff.hindered()) {
            String key = "count." + topic.name();
            parts.add(texts.get(key, signOff.count(topic)));
        }
        return parts.size() < 2 ? String.join("", parts)
            : texts.get("count.and", parts.stream().limit(parts.size() - 1L).collect(Collectors.joining(", ")), parts.getLast());
    }
}
