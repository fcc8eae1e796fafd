using CsCheck;
using Slantwise.Desk.Pages.Lessons;
using Slantwise.Engines.Planning.Practice;
using Slantwise.Records.Planning;

namespace Slantwise.Surface.Tests.Desk.Lessons;

public sealed class PlanTimeChoiceTests
{
    private static readonly PlanningChoice Kept = new() { MatCount = 9, PartnersATurn = 1 };

    [Fact]
    public void Of_AnAddressThatTriesNothing_IsWhatTheLessonKeeps()
    {
        Assert.Equal(Kept, PlanTimeChoice.Of("", Kept).Planning);
        Assert.Equal(Kept, PlanTimeChoice.Of("?from=elsewhere", Kept).Planning);
        Assert.Equal(PlanningChoice.Usual, PlanTimeChoice.Of("").Planning);
        // What was kept by another version and lies outside its range is no choice.
        Assert.Equal(PlanningChoice.Usual, PlanTimeChoice.Of("", new PlanningChoice { MatCount = 0 }).Planning);
    }

    [Theory]
    [InlineData("?try=1")]
    [InlineData("?try=1&mats=&writer=")]
    public void Of_AnEmptyForm_IsTheUsualWhateverIsKept(string query) => Assert.Equal(PlanningChoice.Usual, PlanTimeChoice.Of(query, Kept).Planning);

    [Theory]
    [InlineData("mats=2.5")]
    [InlineData("mats=1e1")]
    [InlineData("action=601")]
    [InlineData("writer=somebody")]
    [InlineData("partners=-1")]
    public void Of_WhatCannotBeTried_IsSaidAndTriesNothing(string query)
    {
        var choice = PlanTimeChoice.Of(query, Kept);
        Assert.True(choice.IsOutside);
        Assert.Equal(PlanningChoice.Usual, choice.Planning);
    }

    [Fact]
    public void QueryOf_AnyChoice_IsReadAsTheSame() => Gen.Select(
        Gen.Int[0, PlanTimeInput.All.Count], Gen.Double[0, 1].List[PlanTimeInput.All.Count, PlanTimeInput.All.Count], Gen.Int[0, 3]).Sample((left, at, writer) =>
        {
            var choice = PlanningChoice.Usual with { RecordedBy = writer == 0 ? null : (Recording)writer };
            for (var i = 0; i < PlanTimeInput.All.Count; i++)
            {
                var input = PlanTimeInput.All[i];
                var number = input.Least + at[i] * (input.Most - input.Least);
                if (i != left) choice = input.With(choice, input.IsWhole ? Math.Round(number) : Math.Round(number, 2));
            }
            var read = PlanTimeChoice.Of(PlanTimeChoice.QueryOf(choice), Kept);
            Assert.False(read.IsOutside);
            Assert.Equal(choice, read.Planning);
        });

    // Every field of a choice but the seed can be typed on the page.
    [Fact]
    public void Inputs_AllTogether_CoverTheChoice()
    {
        var fields = typeof(PlanningChoice).GetProperties().Count(p => p.CanWrite && p.GetMethod is { IsStatic: false });
        Assert.Equal(fields - 2, PlanTimeInput.All.Count);
        Assert.Equal(PlanTimeInput.All.Count, PlanTimeInput.All.Select(i => i.Name).Distinct().Count());
    }
}
