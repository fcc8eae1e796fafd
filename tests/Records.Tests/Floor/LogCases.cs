using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;
using Slantwise.Records.Entries;
using Slantwise.Records.Entries.Files;
using Slantwise.Records.Lessons;
using static Slantwise.Records.Tests.Entries.InventedLesson;

namespace Slantwise.Records.Tests.Floor;

/// <summary>Seeded random logs and what of each holds: the floor's own reading of a log is held to them.</summary>
/// <remarks>
/// In every second case the last entries of one device are not received yet. A device reads them as if the server received them next, whatever its clock says;
/// what holds is therefore what <see cref="EntryLog.Current"/> says once they have been received.
/// </remarks>
internal static class LogCases
{
    public const int Count = 40;

    // By code unit "T2" comes first, "é" last; by most languages' rules it would be another order.
    private static readonly string[] Devices = ["a-tablet", "T2", "é"];

    private static readonly JsonSerializerOptions Plain = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping };

    public static string Text()
    {
        var cases = Enumerable.Range(1, Count).Select(seed =>
        {
            var (log, holds) = CaseOf(seed);
            return new JsonObject
            {
                ["seed"] = seed,
                ["log"] = new JsonArray([.. log.Select(Told)]),
                ["holds"] = new JsonArray([.. holds.Select(id => JsonValue.Create(id))]),
            }.ToJsonString(Plain);
        });
        return "[\n" + string.Join(",\n", cases) + "\n]\n";
    }

    /// <summary>A log in no order, and the ids of what holds in the order that counts.</summary>
    public static (IReadOnlyList<Entry> Log, IReadOnlyList<Guid> Holds) CaseOf(int seed)
    {
        var random = new Random(seed);
        var made = Made(random);
        var received = Received(made, random);
        var holds = EntryLog.Current(received).Select(e => e.Id).ToList();
        var log = received.Select(e => e with { Source = EntrySource.Floor }).ToArray();
        if (seed % 2 == 0)
        {
            // What one device made last is on its way still: all after the last receipt, so given back without one.
            var last = received.Max(e => e.ReceivedAt);
            log = [.. log.Select(e => e.ReceivedAt == last ? e with { ReceivedAt = null } : e)];
        }
        random.Shuffle(log);
        return (log, holds);
    }

    private static List<Entry> Made(Random random)
    {
        var made = new List<Entry>();
        var numbers = new long[Devices.Length];
        var length = random.Next(6, 18);
        while (made.Count < length)
        {
            var device = random.Next(Devices.Length);
            var entry = EntryOf(random, made.Count) with
            {
                DeviceId = Devices[device],
                // A device that lost its count gives a number twice.
                DeviceSequence = random.Next(12) == 0 ? Math.Max(1, numbers[device]) : ++numbers[device],
                // Clocks are wrong by up to a year, each entry anew.
                MadeAt = Clock.Now.AddMinutes(random.Next(-500_000, 500_000)),
            };
            made.Add(Corrected(entry, made, random));
        }
        return made;
    }

    private static Entry EntryOf(Random random, int number)
    {
        var (pupil, task, set) = (Taught.Pupils[random.Next(2)].Id, random.Next(2) == 0 ? BalanceId : RopeId, random.Next(1, 3));
        var entry = new Entry
        {
            SchoolId = SchoolId, Id = new Guid(random.Next(), (short)random.Next(), 0x7000, [0x80, 0, 0, 0, 0, 0, 0, (byte)number]), LessonId = LessonId, PupilId = pupil,
            TaskId = task, SetNumber = set, Fact = new Choice(BalanceLevels[random.Next(4)].Id), Source = EntrySource.Floor, DeviceId = "", DeviceSequence = 0, MadeAt = default,
        };
        return random.Next(11) switch
        {
            0 or 1 => entry,
            2 => entry with { Fact = new Prediction(random.Next(6), null) },
            3 or 4 => entry with { Fact = new Trial(random.Next(2) == 0), TrialNumber = random.Next(1, 3) },
            5 => entry with { Fact = new CueTick(random.Next(1, 3), random.Next(2) == 0) },
            6 => entry with { Fact = new TeacherCheck(random.Next(1, 3), random.Next(2) == 0, true) },
            7 => entry with { TaskId = null, SetNumber = null, Fact = new Presence(random.Next(2) == 0) },
            8 => entry with { SetNumber = null, Fact = new Visit(VisitTopic.Cue, VisitForm.Asked) },
            9 => entry with { SetNumber = null, Fact = new Note("left arm") },
            _ => entry with
            {
                PupilId = null, TaskId = null, SetNumber = null, Fact = random.Next(2) == 0 ? new PhaseMark(PhaseKind.Activity) : new EngagementScan(random.Next(20), 24),
            },
        };
    }

    private static Entry Corrected(Entry entry, List<Entry> made, Random random)
    {
        if (made.Count > 0 && random.Next(7) == 0)
        {
            // Anything can be taken back: an answer, an event, and a taking back.
            var before = made[random.Next(made.Count)];
            return entry with
            {
                PupilId = before.PupilId, TaskId = before.TaskId, SetNumber = before.SetNumber, TrialNumber = before.TrialNumber, Fact = new Withdrawal(), SupersedesId = before.Id,
            };
        }
        var sameSlot = made.Where(e => !EntryLog.IsEvent(entry.Fact) && EntrySlot.Of(e) == EntrySlot.Of(entry)).ToList();
        return (sameSlot.Count, random.Next(10)) switch
        {
            // Two devices that knew nothing of each other, or correct the same word.
            (> 0, < 7) => entry with { SupersedesId = sameSlot[random.Next(sameSlot.Count)].Id },
            // It corrects what this log does not hold.
            (_, 9) => entry with { SupersedesId = Id(9999) },
            _ => entry,
        };
    }

    // Each device delivers in its own order, in batches; one device may be an hour late, and two batches may be received in the same moment.
    private static List<Entry> Received(List<Entry> made, Random random)
    {
        var received = new List<Entry>();
        var at = Clock.Now;
        var waiting = made.GroupBy(e => e.DeviceId).Select(g => new Queue<Entry>(g)).ToList();
        while (waiting.Count > 0)
        {
            // A tick, a fraction, a whole second: written with and without a fraction.
            if (random.Next(4) > 0) at = at.AddTicks(random.Next(3) switch { 0 => 1, 1 => 2_500_000, _ => 10_000_000 });
            var device = waiting[random.Next(waiting.Count)];
            for (var left = random.Next(1, 5); left > 0 && device.TryDequeue(out var entry); left--) received.Add(entry with { ReceivedAt = at });
            if (device.Count > 0) continue;
            waiting.Remove(device);
            // The last batch of all is one device's own, and nothing else came in with it.
            if (waiting.Count == 1) at = at.AddSeconds(1);
        }
        return received;
    }

    private static JsonNode Told(Entry entry)
    {
        var told = JsonSerializer.SerializeToNode(entry, EntryJson.Options)!.AsObject();
        // The same for all, and said once in the test that reads them.
        foreach (var name in (ReadOnlySpan<string>)["schoolId", "lessonId", "source"]) told.Remove(name);
        return told;
    }
}
