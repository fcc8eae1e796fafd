using System.Globalization;
using Slantwise.Records.Tasks;
using Slantwise.Records.Tasks.Designs;
using Slantwise.Records.Tasks.Designs.Grids;
using static Slantwise.Records.Tests.Tasks.Designs.Ladders.LadderProposalTests;

namespace Slantwise.Records.Tests.Tasks.Designs.Grids;

public sealed class GridEditTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en-GB");
    private static readonly TaskDesign OneFoot = Library("one-foot-balance");

    [Theory]
    [InlineData("What I look at", "whatILookAt")]
    [InlineData("Ángulo de la cadera", "anguloDeLaCadera")]
    [InlineData("Steadying", "steadying2")]
    [InlineData("hold s", "holdS2")]
    [InlineData("???", "value")]
    public void Add_Row_HasAKeyOfItsOwn(string name, string key)
    {
        var added = GridEdit.Add(OneFoot with { Factors = [OneFoot.Factors[0]] }, name);
        Assert.Equal(key, added.Factors[^1].Key);
        Assert.Equal(FactorRole.Supporting, added.Factors[^1].Role);
        Assert.All(added.Words.Values, w => Assert.Equal(name, w.Factors[key].Name));
        Assert.Equal(FactorRole.Key, GridEdit.Add(OneFoot with { Factors = [] }, name).Factors[0].Role);
    }

    [Fact]
    public void WithValues_OneLineSaidOtherwise_KeepsItsKeyAndTheLevelsThatStandOnIt()
    {
        var changed = GridEdit.WithValues(OneFoot, "steadying", "en", ["toes down", "foot lifted, arms wide", "foot at the knee, hands on hips", "arms wide, eyes closed"], English);
        Assert.Equal(OneFoot.Factors[0].Range, changed.Factors[0].Range);
        Assert.Equal("toes down", changed.Words["en"].Factors["steadying"].Values["toesDown"]);
        Assert.Equal(OneFoot.Words["es"].Factors["steadying"].Values["toesDown"], changed.Words["es"].Factors["steadying"].Values["toesDown"]);
        Assert.All(changed.Levels, l => Assert.True(changed.IsOnGrid(l)));
    }

    [Fact]
    public void WithValues_LinesInAnotherOrder_MovesTheValues()
    {
        var said = OneFoot.Words["en"].Factors["steadying"].Values;
        var changed = GridEdit.WithValues(OneFoot, "steadying", "en", [said["armsOut"], said["toesDown"], said["handsOnHips"], said["eyesClosed"]], English);
        Assert.Equal(["armsOut", "toesDown", "handsOnHips", "eyesClosed"], changed.Factors[0].Range.Select(v => v.Key));
        Assert.Equal(OneFoot.Levels.Select(l => l.Settings["steadying"]), changed.Levels.Select(l => l.Settings["steadying"]));
    }

    [Fact]
    public void WithValues_LineAddedAndLineTakenAway_LeavesTheOthersWhereTheyAre()
    {
        var said = OneFoot.Words["en"].Factors["steadying"].Values;
        var added = GridEdit.WithValues(OneFoot, "steadying", "en", [.. said.Values, " on a cushion ", "", "On a cushion"], English);
        Assert.Equal("onACushion", added.Factors[0].Range[^1].Key);
        Assert.Equal("on a cushion", added.Words["es"].Factors["steadying"].Values["onACushion"]);
        Assert.All(added.Levels, l => Assert.True(added.IsOnGrid(l)));
        var less = GridEdit.WithValues(OneFoot, "steadying", "en", [.. said.Values.Skip(1)], English);
        Assert.False(less.IsOnGrid(less.Levels[0]));
        Assert.All(less.Levels.Skip(1), l => Assert.True(less.IsOnGrid(l)));
        // Nothing else of the level is lost.
        Assert.Equal(OneFoot.Levels[0].Posture, less.Levels[0].Posture);
    }

    [Theory]
    [InlineData("10;5;3", "10 5 3")]
    [InlineData("3;10;5;x;5", "3 5 10")]
    [InlineData("2.5;1", "2.5 1")]
    public void WithValues_OfADose_AreNumbersThatRiseOrFall(string lines, string expected) =>
        Assert.Equal(expected, string.Join(' ', GridEdit.WithValues(OneFoot, "holdS", "en", lines.Split(';'), English).Factors[1].Range));

    [Fact]
    public void WithUnit_WordsThatAreNumbers_BecomeNumbersAndBack()
    {
        var row = GridEdit.WithValues(GridEdit.Add(OneFoot, "Width"), "width", "en", ["0.6", "0.4", "wide"], English);
        var numbers = GridEdit.WithUnit(row, "width", FactorUnit.M, English).Factors[^1];
        Assert.Equal([0.6m, 0.4m], numbers.Range.Select(v => v.Amount!.Value));
        var words = GridEdit.WithUnit(row with { Factors = [.. row.Factors.SkipLast(1), numbers] }, "width", null, English);
        Assert.All(words.Factors[^1].Range, v => Assert.Null(v.Amount));
        Assert.Equal(2, words.Factors[^1].Range.Count);
    }

    [Fact]
    public void Remove_KeyRow_MakesAnotherOneKey()
    {
        var left = GridEdit.Remove(OneFoot, "steadying");
        Assert.Equal(FactorRole.Key, Assert.Single(left.Factors).Role);
        Assert.All(left.Levels, l => Assert.Empty(l.Settings));
        Assert.All(left.Words.Values, w => Assert.DoesNotContain("steadying", w.Factors.Keys));
    }

    [Fact]
    public void WithDose_OfAnotherKind_AddsARowAndOfTheSameAValueInItsPlace()
    {
        Assert.Equal("3 5 7 10", string.Join(' ', GridEdit.WithDose(OneFoot, new Dose(DoseKind.HoldS, 7)).Factors[1].Range));
        Assert.Same(OneFoot, GridEdit.WithDose(OneFoot, new Dose(DoseKind.HoldS, 5)));
        Assert.Equal("repetitionsCount", GridEdit.WithDose(OneFoot, new Dose(DoseKind.RepetitionsCount, 3)).Factors[^1].Key);
    }
}
