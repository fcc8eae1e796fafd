using Slantwise.Engines.Drawing;
using Slantwise.Paper;
using Slantwise.Paper.LessonPages;
using Slantwise.Paper.Pack;
using Slantwise.Records.Lessons;
using Slantwise.Records.Safety;
using Slantwise.Surface.Tests.Paper.Cards;
using Snapshooter;
using Snapshooter.Xunit3;
using static Slantwise.Surface.Tests.Paper.RiskPages.RiskPaper;

namespace Slantwise.Surface.Tests.Paper.RiskPages;

public sealed class RiskPagePagesTests
{
    [Theory]
    [InlineData("en", PaperSize.A4)]
    [InlineData("en", PaperSize.Letter)]
    [InlineData("es", PaperSize.A4)]
    [InlineData("es", PaperSize.Letter)]
    public void Of_UsualLesson_IsTidyAndHasEverythingOnIt(string language, PaperSize size)
    {
        var record = Record();
        var pages = Print(record, Material(record), Options(language, size));
        Assert.InRange(pages.Count, 1, 2);
        Assert.All(pages, page => Tidy.Check(page));
        var run = string.Concat(pages.Select(p => p.Run()));
        var page = RiskPage.Of(record, Material(record), Options(language).Language);
        IEnumerable<string> said =
        [
            page.Say("LocalRules"), page.Say("Rule"), .. page.Tasks.SelectMany(t => t.Controls.Concat(t.PolicyLines).Append(t.Caution).Append(t.Because)),
            .. page.ProposedChecks, .. page.RestrictionLines, "First-aid box: by the door.", .. page.Gaps.Select(g => g.Sentence), page.Say("SignSignature"),
        ];
        Assert.All(said, s => Assert.Contains(s.Replace(" ", ""), run));
        // Said once, not everywhere.
        Assert.Equal(2, run.Split(page.Say("LocalRules").Replace(" ", "")).Length);
        Assert.Equal([RiskLevel.Low, RiskLevel.Medium, RiskLevel.High], page.Tasks.Select(t => t.Level!.Value));
    }

    [Theory]
    [InlineData("en", PaperSize.A4, false)]
    [InlineData("es", PaperSize.Letter, false)]
    [InlineData("es", PaperSize.A4, true)]
    [InlineData("en", PaperSize.Letter, true)]
    public void Of_EverythingAtItsLimit_CutsNothingAndBeginsEachPageWithItsHeading(string language, PaperSize size, bool hasWideSpacing)
    {
        var (record, material, written) = Longest();
        var options = Options(language, size) with { HasWideSpacing = hasWideSpacing };
        var pages = Print(record, material, options);
        Assert.All(pages, page => Tidy.Check(page));
        var title = RiskWords.Text("Title", options.Language).Replace(" ", "");
        Assert.All(pages, (page, i) =>
        {
            Assert.Contains(title, page.Run());
            Assert.Contains(record.Class.Name.Replace(" ", ""), page.Run());
            Assert.Contains(language == "en" ? $"page{i + 1}of{pages.Count}" : $"página{i + 1}de{pages.Count}", page.Run());
        });
        // Texts may go on over a page's end, where the heading comes between.
        var words = string.Join(' ', pages.SelectMany(p => p.Words())).Split(' ').CountBy(w => w).ToDictionary();
        foreach (var (word, count) in written.SelectMany(w => w.Split(' ')).CountBy(w => w))
            Assert.True(words.GetValueOrDefault(word) >= count, $"{word} is printed {words.GetValueOrDefault(word)} of {count} times.");
        Assert.Equal([pages.Count - 1], Enumerable.Range(0, pages.Count).Where(i => pages[i].Run().Contains(RiskWords.Text("SignHead", options.Language).Replace(" ", ""))));
        // As few pages as it takes: each but the last is full to within two items.
        Assert.All(pages.SkipLast(1), page => Assert.True(page.Shapes.OfType<Text>().Max(t => t.BaselineMm) > page.HeightMm - 15 - (hasWideSpacing ? 85 : 50)));
    }

    [Fact]
    public void Of_OwnLevel_SaysWhatTheRuleProposed()
    {
        var record = Record();
        var material = Material(record) with { Notes = new RiskNotes { Tasks = [new(record.Sheet!.Content.Tasks[2].TaskId, RiskLevel.Medium, [])] } };
        var run = string.Concat(Print(record, material, Options("en")).Select(p => p.Run()));
        Assert.Contains("Theteacher'sownjudgement.Theworkingruleproposes:High.", run);
    }

    [Fact]
    public void Of_RestrictedPupils_AreNamedOnlyWhereAskedAndNeverWithWhatIsRuledOut()
    {
        var record = Record();
        var counted = string.Concat(Print(record, Material(record), Options("en")).Select(p => p.Run()));
        Assert.Contains("2pupilshaverestrictions", counted);
        Assert.DoesNotContain("Amara", counted);
        var named = Print(record, Material(record) with { Notes = new RiskNotes { ShowsNames = true } }, Options("en"));
        var line = Assert.Single(named.SelectMany(p => p.Words()), w => w.Contains("Amara"));
        Assert.EndsWith("Amara, Chiara.", line);
        Assert.DoesNotContain("Okafor", string.Concat(named.Select(p => p.Run())));
    }

    [Fact]
    public void Of_Log_PrintsNearMissesAndNotWhatHurtSomebody()
    {
        var record = Record();
        var task = record.Sheet!.Content.Tasks[0].TaskId;
        var material = Material(record) with
        {
            Incidents = [Noted(record, task, IncidentKind.NearMiss, "Two on one mat.", "One mat each."), Noted(record, task, IncidentKind.Incident, "A wrist was hurt.", "Ice pack in the hall.")],
        };
        var run = string.Concat(Print(record, material, Options("en")).Select(p => p.Run()));
        Assert.Contains("Nearmiss:Twoononemat.Sincethen:Onemateach.", run);
        Assert.DoesNotContain("wrist", run.Replace("wriststire", ""));
    }

    [Fact]
    public void Of_NoEmergencyNotes_SaysWhatIsMissing()
    {
        var record = Record();
        record = record with { School = record.School with { EmergencyNotes = "" } };
        var run = string.Concat(Print(record, Material(record), Options("en")).Select(p => p.Run()));
        Assert.Contains("Noemergencynotesyet", run);
        Assert.DoesNotContain("Inanemergency", run);
    }

    [Fact]
    public void Of_InAPack_IsAPartWithItsPage()
    {
        var record = Record();
        var (without, with) = (LessonPack.Of(record, LessonPlans.None, Options("en")), LessonPack.Of(record, new() { Risk = Material(record) }, Options("en")));
        var own = Print(record, Material(record), Options("en")).Count;
        Assert.Equal(without.Count + own, with.Count);
        // Behind the note and the lesson page.
        var at = 1 + LessonPage.Of(record, new() { Risk = Material(record) }, Options("en")).Count;
        Assert.Contains(with[0].Scene.Words(), w => w.Contains("Risk page") && w.EndsWith($"{at + 1}", StringComparison.Ordinal));
        Assert.Contains("Riskpage", with[at].Scene.Run());
        Tidy.Check(with[0].Scene);
    }

    [Theory]
    [InlineData("en")]
    [InlineData("es")]
    public void Of_UsualLesson_MatchesApproved(string language) => Snapshot.Match(
        string.Join("\n---\n", Print(Record(), Material(Record()), Options(language)).Select(p => p.Listing())), SnapshotNameExtension.Create(language));
}
