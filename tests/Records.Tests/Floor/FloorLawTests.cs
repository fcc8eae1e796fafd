using CsCheck;
using Slantwise.Records.Entries;
using Slantwise.Records.Floor;
using Slantwise.Records.Tests.Stores;
using static Slantwise.Records.Tests.Floor.OpenLesson;

namespace Slantwise.Records.Tests.Floor;

public sealed class FloorLawTests
{
    private const int DeviceCount = 4;

    /// <summary>What a device does: to a trial of its pupil, write or take back.</summary>
    private static readonly Gen<(int Set, int Trial, bool IsTakenBack, bool IsSuccess)> Act = Gen.Select(Gen.Int[1, 2], Gen.Int[1, 2], Gen.Bool, Gen.Bool);

    private static readonly Gen<(List<(int Set, int Trial, bool IsTakenBack, bool IsSuccess)>[] Acts, int Seed, bool IsRestarted)> Case =
        Gen.Select(Act.List[0, 12].Array[DeviceCount], Gen.Int, Gen.Bool);

    [Theory, EachDatabase]
    public async Task Take_BatchesCutDoubledAndShuffled_KeepsEachEntryOnceAndReadsTheSame(Database database)
    {
        await using var open = await OpenLesson.OpenAsync(database);
        await Case.SampleAsync(
            async sample =>
            {
                var lesson = open.School.Lesson with { Id = EntryId.New(open.Clock), SheetVersion = 1 };
                await open.Store.SaveLessonAsync(lesson);
                await open.Hub.OpenAsync(open.School.Id, lesson.Id);
                // The last device shares the first one's pupil, and neither knows what the other writes.
                for (var d = 0; d < DeviceCount; d++)
                    await (await open.Hub.JoinAsync(open.School.Id, lesson.Id, new($"d{d}", FloorDeviceKind.Pupil))).ClaimAsync(new([open.School.Pupils[d % 3].Id]));
                var made = sample.Acts.Select((acts, d) => Made(open, lesson.Id, d, acts)).ToArray();
                await DeliverAsync(open, lesson.Id, made, new Random(sample.Seed), sample.IsRestarted);

                var kept = await open.Test.Store.ListEntriesAsync(open.School.Id, lesson.Id);
                Assert.Equal(made.SelectMany(m => m).Select(e => e.Id).Order(), kept.Select(e => e.Id).Order());
                var current = EntryLog.Current(kept).ToDictionary(EntrySlot.Of, e => e.Id);
                var own = made.Select(m => EntryLog.Current(m).ToDictionary(EntrySlot.Of, e => e.Id)).ToArray();
                foreach (var slot in own.SelectMany(o => o.Keys).Distinct()) Assert.Contains(current[slot], own.Where(o => o.ContainsKey(slot)).Select(o => o[slot]));
                Assert.All(current.Keys, slot => Assert.Contains(own, o => o.ContainsKey(slot)));
            },
            iter: 40, threads: 1);
    }

    private static List<Entry> Made(OpenLesson open, Guid lessonId, int device, List<(int Set, int Trial, bool IsTakenBack, bool IsSuccess)> acts)
    {
        var recorder = new Recorder(open.School.Id, lessonId, EntrySource.Floor, $"d{device}", open.Clock, []);
        var pupil = open.School.Pupils[device % 3].Id;
        return acts
            .Select(act => act.IsTakenBack
                ? recorder.TakeBack(new EntrySlot(nameof(Trial), pupil, open.School.Task.Id, act.Set, act.Trial, null))
                : recorder.Put(pupil, open.School.Task.Id, act.Set, act.Trial, new Trial(act.IsSuccess)))
            .OfType<Entry>()
            .ToList();
    }

    // Every entry at least once, in any order, some again, several devices at a time; nobody is told anything that is not so.
    private static async Task DeliverAsync(OpenLesson open, Guid lessonId, List<Entry>[] made, Random random, bool isRestarted)
    {
        var batches = made.SelectMany((entries, d) => entries.Concat(entries.Where(_ => random.Next(3) == 0))
                .OrderBy(_ => random.Next()).Chunk(random.Next(1, 5)).Select(batch => (Device: $"d{d}", Entries: batch)))
            .OrderBy(_ => random.Next()).ToList();
        foreach (var together in batches.Chunk(3))
        {
            if (isRestarted && random.Next(3) == 0) await open.RestartAsync();
            var answers = await Task.WhenAll(together.Select(async batch =>
                (batch.Entries, Answer: await TakeAsync(await open.Hub.MemberAsync(open.School.Id, lessonId, batch.Device), batch.Entries))));
            foreach (var (entries, answer) in answers)
            {
                Assert.Empty(answer.Refused);
                Assert.Equal(entries.Select(e => e.Id).Distinct(), answer.TakenIds);
            }
        }
    }
}
