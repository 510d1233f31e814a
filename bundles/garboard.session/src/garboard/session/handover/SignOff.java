// SPDX-License-Identifier: EPL-2.0
package garboard.session.handover;

import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

import garboard.session.OpenRecord;
import garboard.session.handover.OpenPoint.Topic;

/**
 * What still stands between a record and a signature, as a warranty desk would ask for it, and what who signs should know besides.
 *
 * @param points by topic, and in each the gravest first
 */
public record SignOff(List<OpenPoint> points) {

    public SignOff {
        points = List.copyOf(points);
    }

    /** {@return how a record stands now} */
    public static SignOff of(OpenRecord open, Clock clock) {
        var points = new ArrayList<OpenPoint>();
        points.addAll(JudgedPoints.of(open.verdicts().evaluation()));
        points.addAll(WarrantyPoints.of(open.record(), LocalDate.now(clock)));
        points.addAll(TrialPoints.of(open, clock));
        points.addAll(InspectionPoints.of(open.record()));
        points.addAll(KnownPoints.of(open.record()));
        // A list sorted by topic keeps the order within each.
        points.sort(Comparator.comparing(OpenPoint::topic));
        return new SignOff(points);
    }

    /** {@return the points by topic; topics without a point are left out} */
    public Map<Topic, List<OpenPoint>> byTopic() {
        var byTopic = new EnumMap<Topic, List<OpenPoint>>(Topic.class);
        points.forEach(point -> byTopic.computeIfAbsent(point.topic(), none -> new ArrayList<>()).add(point));
        return byTopic;
    }

    public List<OpenPoint> at(Topic topic) {
        return points.stream().filter(point -> point.topic() == topic).toList();
    }

    /** {@return how many of the points of a topic there are; several checks that are told in one sentence count one by one} */
    public int count(Topic topic) {
        return at(topic).stream().mapToInt(SignOff::weight).sum();
    }

    private static int weight(OpenPoint point) {
        return point.matter() == OpenPoint.Matter.UNTOLD ? Integer.parseInt(point.facts().get(1)) : 1;
    }

    /** {@return the topics in which something stands in the way} */
    public List<Topic> hindered() {
        return byTopic().keySet().stream().filter(Topic::hinders).toList();
    }

    /** {@return whether nothing stands in the way of a signature} */
    public boolean isClear() {
        return hindered().isEmpty();
    }

    /** {@return whether a check broke, so that nobody can sign: what was found is then not known} */
    public boolean isBarred() {
        return at(Topic.PROGRAM).stream().anyMatch(point -> point.verdict().isPresent());
    }
}
