using CsCheck;
using Slantwise.Desk.Pages.Evidence;
using Slantwise.Records.Entries;
using Slantwise.Records.Lessons;
using Slantwise.Surface.Tests.Desk.Results;

namespace Slantwise.Surface.Tests.Desk.Evidence;

public sealed class EvidencePartTests
{
    [Fact]
    public void FromKey_AnyPart_IsReadAsItWasWritten() =>
        Gen.Select(Gen.Enum<EvidencePartKind>(), Gen.Int[0, 9], Gen.Int[0, 99]).Sample((kind, task, place) =>
        {
            var part = new EvidencePart(kind, task, place);
            Assert.Equal(part, EvidencePart.FromKey(part.Key));
        });

    [Theory]
    [InlineData(null)]
    [InlineData("")]
    [InlineData("Level")]
    [InlineData("Level-1")]
    [InlineData("Level-01-0")]
    [InlineData("level-1-0")]
    [InlineData("Level--1-0")]
    public void FromKey_OtherText_IsNone(string? key) => Assert.Null(EvidencePart.FromKey(key));

    [Fact]
    public void EntryIds_LevelTried_AreItsChoiceAndTrials()
    {
        var typist = new Typist(SampleLesson.Sheet()).Press("241101113h").Leave();
        var view = EvidenceView.Of(RecordOf(typist.Log));

        var ids = new EvidencePart(EvidencePartKind.Level, 1, 1).EntryIds(view);

        Assert.Equal(
            typist.Log.Where(e => e.Fact is Choice or Trial).Select(e => e.Id).Order(),
            ids.Order());
        Assert.Empty(new EvidencePart(EvidencePartKind.Level, 1, 0).EntryIds(view));
    }

    [Fact]
    public void EntryIds_DecisionsAndCuesAtALevel_AreThoseOfItsSetsOnly()
    {
        var typist = new Typist(SampleLesson.Sheet()).Press("241101113h").Leave();
        var view = EvidenceView.Of(RecordOf(typist.Log));

        Assert.Equal(typist.Log.Where(e => e.Fact is Decision).Select(e => e.Id), new EvidencePart(EvidencePartKind.LevelDecisions, 1, 1).EntryIds(view));
        Assert.Empty(new EvidencePart(EvidencePartKind.LevelDecisions, 1, 0).EntryIds(view));
        Assert.Equal(typist.Log.Where(e => e.Fact is CueTick).Select(e => e.Id).Order(), EvidencePart.LevelCue(1, 1, 3).EntryIds(view).Order());
        Assert.NotEmpty(EvidencePart.LevelCue(1, 1, 3).EntryIds(view));
        Assert.Empty(EvidencePart.LevelCue(1, 0, 3).EntryIds(view));
        Assert.Empty(EvidencePart.LevelCue(1, 1, 4).EntryIds(view));
    }

    [Fact]
    public void EntryIds_PartsThatAreNotThere_AreEmpty()
    {
        var view = EvidenceView.Of(RecordOf([]));
        Assert.False(view.HasEntries);
        foreach (var kind in Enum.GetValues<EvidencePartKind>()) Assert.Empty(new EvidencePart(kind, 9, 99).EntryIds(view));
    }

    private static LessonRecord RecordOf(IReadOnlyList<Entry> log) => SampleLesson.Record(SampleLesson.Sheet()) with { Entries = log };
}
