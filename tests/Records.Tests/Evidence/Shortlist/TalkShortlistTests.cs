using System.Globalization;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Evidence.Shortlist;
using Slantwise.Records.Schools;
using static Slantwise.Records.Tests.Evidence.LessonBuilder;

namespace Slantwise.Records.Tests.Evidence.Shortlist;

public sealed class TalkShortlistTests
{
    private static readonly string[] Names = ["Ada", "Ben", "Cem", "Dia", "Eva", "Fay", "Gil", "Hal", "Ida"];

    private static LessonBuilder Lesson(int number = 1) => new LessonBuilder(number).Pupils(Names)
        .Task(1, "V-sit", ["chest up"], (1, 3, null), (2, 5, null), (3, 8, BodyDemand.HeadWeight));

    private static IReadOnlyList<ShortlistedTalk> Shortlist(params LessonBuilder[] lessons)
    {
        var unit = UnitEvidence.Of([.. lessons.Select(l => l.Record())]);
        return TalkShortlist.Of(unit.Conferences, unit.Pupils, unit.Lessons);
    }

    private static string Labels(IReadOnlyList<ShortlistedTalk> talks) => string.Join(' ', talks.Select(t => t.Conference.Label));

    private static LessonBuilder AllWrote(LessonBuilder lesson, string tries = "1 1 1 0 0")
    {
        foreach (var name in Names) lesson.Set(name, 1, level: 1, tries: tries);
        return lesson;
    }

    [Fact]
    public void Of_NoLesson_IsEmpty() => Assert.Empty(TalkShortlist.Of([], [], []));

    [Fact]
    public void Of_EverybodyKnownAlike_IsSixOneAPupilAndTakesTurns()
    {
        Assert.Equal("Ada Ben Cem Dia Eva Fay", Labels(Shortlist(AllWrote(Lesson()))));
        Assert.Equal("Gil Hal Ida Ada Ben Cem", Labels(Shortlist(AllWrote(Lesson()), AllWrote(Lesson(2)))));
    }

    [Fact]
    public void Of_SafetyThenLittleKnownThenLongNotVisited_ComeInThatOrder()
    {
        var first = AllWrote(Lesson());
        foreach (var name in Names.Where(n => n is not "Hal" and not "Cem")) first.Add(name, null, null, new Visit(VisitTopic.Cue, VisitForm.Asked));
        var second = Lesson(2);
        foreach (var name in Names) second.Set(name, 1, level: name == "Eva" ? 3 : 1, tries: "1 1 1 0 0");
        second.Add("Cem", null, null, new Visit(VisitTopic.Cue, VisitForm.Asked));
        second.Pupils("Zoe");

        // Eva's level is not open to her, Zoe is new and has written nothing, Hal was never visited; then, from the seventh name on, those last visited in lesson 1.
        var talks = Shortlist(first, second);
        Assert.Equal("Eva Zoe Hal Gil Ida Ada", Labels(talks));
        Assert.Equal([1, null, null, 1, 1, 1], talks.Select(t => t.LessonsSinceTalk));
        Assert.Equal([10, 0, 10, 10, 10, 10], talks.Select(t => t.TrialCount));
    }

    [Fact]
    public void Of_SafetyTalkedAboutInTheLatestLesson_IsNoLongerFirst()
    {
        var lesson = AllWrote(Lesson()).Set("Ida", 2, level: 3, tries: "1");
        Assert.StartsWith("Ida", Labels(Shortlist(lesson)));
        lesson.Add("Ida", 1, null, new Visit(VisitTopic.Safety, VisitForm.Described));
        Assert.Equal("Ada Ben Cem Dia Eva Fay", Labels(Shortlist(lesson)));
    }

    [Fact]
    public void Of_AnyResults_NamesTheSamePupils()
    {
        // A law: what was reached and missed moves no pupil up or down.
        var expected = "Hal Ida Ben Cem Dia Eva";
        foreach (var tries in new[] { "1 1 1 1 1", "0 0 0 0 0", "1 0 0 0 0", "0 1 0 1 1" })
        {
            var lesson = Lesson();
            foreach (var name in Names.Where(n => n is not "Hal" and not "Ida"))
            {
                // All others do the opposite of Ben, and Ada was talked with.
                var own = name == "Ben" ? tries : tries.Replace('1', '2').Replace('0', '1').Replace('2', '0');
                lesson.Set(name, 1, level: 1, predicted: 5, tries: own, decision: NextLevel.Harder);
            }
            lesson.Add("Ada", null, null, new Visit(VisitTopic.Cue, VisitForm.Asked));
            Assert.Equal(expected, Labels(Shortlist(lesson)));
        }
    }

    [Fact]
    public void Of_PupilsWithoutAQuestion_AreAskedNeutrally()
    {
        var english = CultureInfo.GetCultureInfo("en");
        var talks = Shortlist(AllWrote(Lesson()));
        Assert.Equal("The sheets raise no question, and no talk is noted yet.", talks[0].Conference.Reason(english));
        Assert.Equal("Tell me about the level you are at: how did you come to it?", talks[0].Conference.Question(english));

        var few = new LessonBuilder().Pupils("Ada").Task(1, "V-sit", [], (1, 3, null)).Set("Ada", 1, level: 1, tries: "1 0");
        var ada = Assert.Single(Shortlist(few)).Conference;
        Assert.Equal("Tries written so far: 2. Too few to say anything.", ada.Reason(english));
        Assert.Equal(3, ada.EntryIds.Count);
    }

    [Fact]
    public void SafetyLeftCount_MoreThanSixAboutSafety_SaysHowManyAreNotShown()
    {
        var lesson = Lesson();
        foreach (var name in Names) lesson.Set(name, 1, level: 3, tries: "1");
        var unit = UnitEvidence.Of([lesson.Record()]);
        var talks = TalkShortlist.Of(unit.Conferences, unit.Pupils, unit.Lessons);
        Assert.Equal(TalkShortlist.MostTalks, talks.Count);
        Assert.Equal(3, TalkShortlist.SafetyLeftCount(unit.Conferences, talks));
    }
}
