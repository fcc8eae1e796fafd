using System.Globalization;
using Slantwise.Desk.Words;
using Slantwise.Records.Schools;

namespace Slantwise.Surface.Tests.Desk;

public sealed class RestrictionWordsTests
{
    private static readonly DateOnly Today = new(2026, 3, 12);

    [Theory]
    [InlineData(null, null, false, "no rolls", "no rolls")]
    [InlineData(null, 3, false, "no rolls, until 15 March", "no rolls, until 15 March")]
    [InlineData(-3, null, false, "no rolls", "no rolls, since 9 March")]
    [InlineData(-3, 3, false, "no rolls, until 15 March", "no rolls, since 9 March until 15 March")]
    [InlineData(2, 3, false, "no rolls, until 15 March", "no rolls, from 14 March until 15 March")]
    [InlineData(-9, -3, false, "no rolls, ended 9 March", "no rolls, ended 9 March")]
    [InlineData(-3, 18, true, "no rolls, not before 30 March and lifted by hand", "no rolls, since 9 March, not before 30 March and lifted by hand")]
    [InlineData(-30, 0, true, "no rolls, until lifted by hand; 12 March has come", "no rolls, since 10 February, until lifted by hand; 12 March has come")]
    [InlineData(null, null, true, "no rolls, until lifted by hand", "no rolls, until lifted by hand")]
    public void Of_AnyDays_SaysWhatAndHowLongAndNeverWhy(int? since, int? until, bool isByHand, string brief, string whole)
    {
        CultureInfo.CurrentCulture = CultureInfo.CurrentUICulture = CultureInfo.GetCultureInfo("en-GB");
        var restriction = new Restriction
        {
            SchoolId = Guid.Empty, Id = Guid.Empty, PupilId = Guid.Empty, Without = BodyDemand.Roll,
            Since = since is { } a ? Today.AddDays(a) : null, Until = until is { } b ? Today.AddDays(b) : null, IsLiftedByHand = isByHand,
        };
        Assert.Equal(brief, RestrictionWords.Of(restriction, Today));
        Assert.Equal(whole, RestrictionWords.Whole(restriction, Today));
    }
}
