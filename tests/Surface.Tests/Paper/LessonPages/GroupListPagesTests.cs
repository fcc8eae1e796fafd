using CsCheck;
using Slantwise.Paper;
using Slantwise.Paper.LessonPages;
using Slantwise.Records.Groups;
using Slantwise.Records.Lessons;
using Slantwise.Surface.Tests.Paper.Cards;

namespace Slantwise.Surface.Tests.Paper.LessonPages;

public class GroupListPagesTests
{
    private static GroupPlan Plan(LessonRecord record, int groups, int? mats = 14)
    {
        var plan = new GroupPlan
        {
            Sizing = new(false, groups), NeedsSupporter = true, Wishes = [new(false, record.Pupils[0].Id, record.Pupils[^1].Id)],
            Known = [.. record.Pupils.Select((p, i) => new KnownExperience(p.Id, (PupilExperience)(1 + i % 3), i % 4 == 0))],
        };
        return GroupMaking.Of(GroupRoster.Of(record, false), plan, mats).Plan;
    }

    [Theory]
    [InlineData(PaperSize.A4, 28, 7)]
    [InlineData(PaperSize.Letter, 30, 15)]
    [InlineData(PaperSize.A4, 1, 1)]
    public void Of_AClass_IsOneTidyPageWithEveryFirstNameOnceAndLarge(PaperSize size, int pupils, int groups)
    {
        var record = PaperLessons.Of(pupils, PaperLessons.Tripod);
        var page = Assert.Single(GroupListPages.Of(record, GroupList.Of(record.Pupils, Plan(record, groups), ["Rolls", "Ropes"], 6), CardLessons.English with { Size = size }));
        Tidy.Check(page);
        var words = page.Words().ToList();
        Assert.All(record.Pupils, p => Assert.Single(words, w => w == p.Label.Split(' ')[0]));
        Assert.DoesNotContain("Okafor", page.Run());
        Assert.Contains("Group1", page.Run());
        Assert.Contains("Everymineachgroup".Replace("Every", "Every6"), page.Run());
        Assert.All(page.Shapes.OfType<Slantwise.Engines.Drawing.Text>().Where(t => record.Pupils.Any(p => p.Label.Split(' ')[0] == t.Content)), t => Assert.True(t.SizePt >= 13));
    }

    // Nothing that was said of pupils or wished reaches the wall: the same names in the same groups make the same page, whatever was said.
    [Fact]
    public void Of_WhateverWasSaidAndWished_IsTheSamePage() => Gen.Select(Gen.Int[0, 3].List[12, 12], Gen.Bool.List[12, 12], Gen.Bool).Sample(
        (said, may, needs) =>
        {
            var record = PaperLessons.Of(12, PaperLessons.Tripod);
            var plan = Plan(record, 3);
            var other = plan with
            {
                Known = [.. record.Pupils.Select((p, i) => new KnownExperience(p.Id, said[i] == 0 ? null : (PupilExperience)said[i], may[i]))], NeedsSupporter = needs, Wishes = [],
                Groups = [.. plan.Groups.Select(g => g with { LockedPupilIds = g.PupilIds })],
            };
            Assert.Equal(Run(plan), Run(other));

            string Run(GroupPlan p) => Assert.Single(GroupListPages.Of(record, GroupList.Of(record.Pupils, p, [], null), CardLessons.English)).Run();
        },
        iter: 20, threads: 1);

    [Fact]
    public void Of_AHundredAndEightyPupils_TakesMorePagesAndLeavesNobodyOut()
    {
        var one = PaperLessons.Of(30, PaperLessons.Tripod);
        var record = one with
        {
            Pupils = [.. Enumerable.Range(0, 180).Select(i => one.Pupils[i % 30] with { Id = new Guid(i + 1, 0, 0, new byte[8]), Code = $"C{i}", DisplayName = $"Nobody{i} Such" })],
        };
        var pages = GroupListPages.Of(record, GroupList.Of(record.Pupils, Plan(record, 2), [], null), CardLessons.Spanish);
        Assert.True(pages.Count > 1);
        Assert.All(pages, p => Tidy.Check(p));
        Assert.Equal(180, pages.SelectMany(p => p.Words()).Count(w => w.StartsWith("Nobody", StringComparison.Ordinal)));
    }

    [Fact]
    public void Of_NoGroups_IsNoPage()
    {
        var record = PaperLessons.Of(3, PaperLessons.Tripod);
        Assert.Empty(GroupListPages.Of(record, GroupList.Of(record.Pupils, new GroupPlan(), ["Rolls"], 6), CardLessons.English));
    }
}
