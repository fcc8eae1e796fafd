using Slantwise.Desk.Pages.Evidence;
using Slantwise.Desk.Words;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;

namespace Slantwise.Surface.Tests.Desk.Evidence;

public sealed class EntryWordingTests
{
    private static readonly EntryFact[] Facts =
    [
        new Presence(true), new Choice(Guid.Empty), new Prediction(3, null), new Trial(true), new CueTick(1, true), new Decision(NextLevel.Same), new TeacherCheck(1, true, true),
        new Visit(VisitTopic.Cue, VisitForm.Asked), new PhaseMark(PhaseKind.Activity), new EngagementScan(24, 27), new Note("left arm"),
    ];

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void What_EveryKindOfFact_IsSaidAsItself(string language)
    {
        using var spoken = new Spoken(language);
        // Every kind there is but the withdrawal, which is said as what it takes back.
        Assert.Equal(typeof(EntryFact).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(EntryFact)) && t != typeof(Withdrawal)).Count(), Facts.Length);
        var said = Facts.Select(Said).ToList();
        Assert.Equal(said.Count, said.Distinct().Count());
        Assert.DoesNotContain(EvidenceWords.Say("FactTakenBackUnknown"), said);
    }

    [Fact]
    public void What_LookOrNote_SaysHowManyOfHowManyAndTheTeachersWords()
    {
        using var spoken = new Spoken("en");
        Assert.Equal("look around the hall: 24 of 27 engaged", Said(new EngagementScan(24, 27)));
        Assert.Equal("note: left arm", Said(new Note("left arm")));
    }

    private static string Said(EntryFact fact) => new EntryWording(new LessonRecord
    {
        School = new() { Id = Guid.Empty, Name = "School" },
        Class = new() { SchoolId = Guid.Empty, Id = Guid.Empty, Name = "7B" },
        Lesson = new() { SchoolId = Guid.Empty, Id = Guid.Empty, ClassId = Guid.Empty, Date = new(2026, 3, 2) },
    }).What(new Entry
    {
        SchoolId = Guid.Empty, Id = Guid.Empty, LessonId = Guid.Empty, TrialNumber = 1, Fact = fact, Source = EntrySource.Floor, DeviceId = "phone", DeviceSequence = 1, MadeAt = default,
    });
}
