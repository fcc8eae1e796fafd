using CsCheck;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;

namespace Slantwise.Records.Tests.Stores;

/// <summary>Random entries of every kind, with texts and numbers at the edges of what can be kept.</summary>
internal static class EntryGen
{
    private static readonly Gen<string> Text = Gen.OneOf(Gen.Char['\u0001', '\uD7FF'].Select(c => c.ToString()), Picked("🤸", "ñ", "\"", "'", "\\", "\n", "\t"))
        .Array[0, 20].Select(parts => string.Concat(parts));

    private static readonly Gen<double?> Seconds = Gen.OneOf(Gen.Const((double?)null), Gen.Double[0, 600].Select(s => (double?)s), Picked<double?>(0, 0.1, 600, double.Epsilon, double.MaxValue));

    private static readonly Gen<int?> Number = Gen.OneOf(Gen.Const((int?)null), Gen.Int[0, 12].Select(n => (int?)n));

    public static readonly Gen<EntryFact> Fact = Gen.OneOf<EntryFact>(
        Gen.Bool.Select(b => (EntryFact)new Presence(b)),
        Gen.Guid.Select(id => (EntryFact)new Choice(id)),
        Gen.Select(Number, Seconds, (n, s) => (EntryFact)new Prediction(n, s)),
        Gen.Select(Gen.Bool, Seconds, (b, s) => (EntryFact)new Trial(b, s)),
        Gen.Select(Gen.Int[1, 5], Gen.Bool, (n, b) => (EntryFact)new CueTick(n, b)),
        Gen.Select(Gen.Enum<NextLevel>(), Text, (n, t) => (EntryFact)new Decision(n, t)),
        Gen.Select(Gen.Int[1, 5], Gen.Bool, Gen.Bool, (n, met, blind) => (EntryFact)new TeacherCheck(n, met, blind)),
        Gen.Select(Gen.Enum<VisitTopic>(), Gen.Enum<VisitForm>(), Text, (topic, form, t) => (EntryFact)new Visit(topic, form, t)),
        Gen.Enum<PhaseKind>().Select(k => (EntryFact)new PhaseMark(k)),
        Gen.Select(Gen.Int[0, 200], Gen.Int[1, 200], (engaged, present) => (EntryFact)new EngagementScan(engaged, present)),
        Text.Select(t => (EntryFact)new Note(t)),
        Gen.Const((EntryFact)new Withdrawal()));

    private static readonly Gen<DateTimeOffset> Instant = Gen.Long[0, DateTime.MaxValue.Ticks].Select(t => new DateTimeOffset(t, TimeSpan.Zero));

    private static Gen<T> Picked<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);

    /// <summary>Entries of a school's lesson about its pupils; ids never repeat.</summary>
    public static Gen<Entry> Of(SampleSchool school) =>
        from fact in Fact
        from pupil in Gen.Int[-1, school.Pupils.Count - 1]
        from numbers in Gen.Select(Number, Number)
        from task in Gen.Bool
        from source in Gen.Enum<EntrySource>()
        from device in Text
        from sequence in Gen.Long[1, long.MaxValue]
        from madeAt in Instant
        from ids in Gen.Select(Gen.Guid, Gen.Guid, Gen.Bool)
        select new Entry
        {
            SchoolId = school.Id, Id = ids.Item1, LessonId = school.Lesson.Id, PupilId = pupil < 0 ? null : school.Pupils[pupil].Id,
            TaskId = task ? school.Task.Id : null, SetNumber = numbers.Item1, TrialNumber = numbers.Item2, Fact = fact, Source = source,
            DeviceId = device, DeviceSequence = sequence, MadeAt = madeAt, SupersedesId = ids.Item3 ? ids.Item2 : null,
        };
}
