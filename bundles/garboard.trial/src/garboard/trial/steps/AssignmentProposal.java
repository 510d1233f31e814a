// SPDX-License-Identifier: EPL-2.0
package garboard.trial.steps;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.eclipse.emf.ecore.EAttribute;

import garboard.model.GarboardPackage;
import garboard.quantity.Kind;
import garboard.trial.log.AcLine;
import garboard.trial.log.Channel;
import garboard.trial.log.Measurand;
import garboard.trial.log.SourcedTable;
import garboard.trial.store.StoredChannel;

/**
 * Which channels could fill which field of a reading, the best first. Where there are several of the same goodness (two batteries, two
 * engines), the log does not tell which is meant and a person must.
 *
 * @param candidates by field; fields that no channel can fill are not there
 */
public record AssignmentProposal(Map<EAttribute, List<StoredChannel>> candidates) {

    /** What a source is called that is not the generator. */
    private static final Set<String> OTHER_SOURCES = Set.of("input", "utility", "bus 1");

    /** One way to fill a field. */
    private record Way(String field, Measurand measurand, AcLine line, Pattern message) {

        boolean fits(Channel channel) {
            return channel.measurand() == measurand && channel.line() == line && message.matcher(channel.origin().message()).matches()
                && !OTHER_SOURCES.contains(channel.detail());
        }
    }

    /** {@return the proposal for the channels of a store; those that are silent are passed over} */
    public static AssignmentProposal of(List<StoredChannel> channels) {
        Map<EAttribute, List<StoredChannel>> candidates = new LinkedHashMap<>();
        for (EAttribute field : fields()) {
            List<StoredChannel> found = new ArrayList<>();
            for (Way way : Table.WAYS) {
                if (way.field.equals(field.getName())) {
                    channels.stream().filter(stored -> !stored.isSilent() && way.fits(stored.channel()) && !found.contains(stored))
                        .sorted(Comparator.comparingLong(StoredChannel::readings).reversed()).forEach(found::add);
                }
            }
            if (!found.isEmpty()) {
                candidates.put(field, List.copyOf(found));
            }
        }
        return new AssignmentProposal(candidates);
    }

    /**
     * {@return the best candidate of each field, to be confirmed by a person} The lines of the AC side are those of one source, that of the
     * voltage of line 1; a line that it does not send stays open, however many others do.
     */
    public Assignment best() {
        GarboardPackage model = GarboardPackage.eINSTANCE;
        Optional<Channel> source = Optional.ofNullable(candidates.get(model.getReading_Voltage1())).map(found -> found.get(0).channel());
        List<EAttribute> lines = List.of(model.getReading_Voltage2(), model.getReading_Voltage3(), model.getReading_Current1(),
            model.getReading_Current2(), model.getReading_Current3());
        Map<EAttribute, Channel> best = new LinkedHashMap<>();
        candidates.forEach((field, found) -> found.stream().map(StoredChannel::channel)
            .filter(channel -> !lines.contains(field) || source.isEmpty() || isSameDevice(channel, source.get())).findFirst()
            .ifPresent(channel -> best.put(field, channel)));
        return Assignment.of(best);
    }

    /** {@return the fields of which a person must say which of several sources fills them} */
    public List<EAttribute> unclear() {
        return candidates.entrySet().stream().filter(entry -> isUnclear(entry.getValue())).map(Map.Entry::getKey).toList();
    }

    /** {@return whether the two best differ only in who sent them} */
    private static boolean isUnclear(List<StoredChannel> candidates) {
        if (candidates.size() < 2) {
            return false;
        }
        Channel one = candidates.get(0).channel();
        Channel other = candidates.get(1).channel();
        return one.measurand() == other.measurand() && one.line() == other.line() && one.origin().message().equals(other.origin().message());
    }

    /** {@return the total load: one channel, or one for each line; nothing where there is no power} */
    public static List<StoredChannel> load(List<StoredChannel> channels) {
        List<StoredChannel> total = power(channels, AcLine.ALL);
        List<StoredChannel> whole = total.isEmpty() ? power(channels, AcLine.NONE) : total;
        if (!whole.isEmpty()) {
            return List.of(whole.get(0));
        }
        List<StoredChannel> first = power(channels, AcLine.L1);
        if (first.isEmpty()) {
            return List.of();
        }
        // The lines of one source belong together.
        Channel one = first.get(0).channel();
        return power(channels).filter(stored -> isSameSource(stored.channel(), one)).toList();
    }

    private static boolean isSameSource(Channel channel, Channel as) {
        return isSameDevice(channel, as) && isSameMessage(channel.origin().message(), as.origin().message());
    }

    private static boolean isSameDevice(Channel channel, Channel as) {
        return channel.origin().bus().equals(as.origin().bus()) && channel.origin().sender().equals(as.origin().sender())
            && channel.instance().equals(as.instance()) && channel.detail().equals(as.detail());
    }

    /** The lines are in one message, or in three with numbers that follow each other. */
    private static boolean isSameMessage(String message, String as) {
        return message.equals(as) || List.of("12774[456]", "650(20|23|26)").stream().anyMatch(three -> message.matches(three) && as.matches(three));
    }

    private static Stream<StoredChannel> power(List<StoredChannel> channels) {
        return channels.stream().filter(stored -> !stored.isSilent() && stored.channel().measurand() == Measurand.AC_POWER);
    }

    private static List<StoredChannel> power(List<StoredChannel> channels, AcLine line) {
        return power(channels).filter(stored -> stored.channel().line() == line && !OTHER_SOURCES.contains(stored.channel().detail()))
            .sorted(Comparator.comparingLong(StoredChannel::readings).reversed()).toList();
    }

    /** {@return the fields of a reading that instruments can fill, in the order of the model} */
    public static List<EAttribute> fields() {
        return GarboardPackage.Literals.READING.getEAllAttributes().stream().filter(AssignmentProposal::isFilledByInstruments).toList();
    }

    static boolean isFilledByInstruments(EAttribute attribute) {
        return Optional.ofNullable(attribute.getEAttributeType().getInstanceClass()).flatMap(Kind::ofType).isPresent();
    }

    /** Read when first asked for. */
    private static final class Table {

        static final List<Way> WAYS = SourcedTable.of(AssignmentProposal.class, "fields.csv").rows().stream()
            .map(row -> new Way(row[0], Measurand.valueOf(row[1]), AcLine.valueOf(row[2]), Pattern.compile(row[3].isEmpty() ? ".*" : row[3])))
            .toList();
    }
}
