using System.Globalization;
using Slantwise.Desk.Pages.Evidence;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Surface.Tests.Desk.Evidence;

public sealed class CautionTextTests : IDisposable
{
    private readonly (CultureInfo Numbers, CultureInfo Words) _before = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);

    public CautionTextTests() => Speak("en-GB");

    public void Dispose() => (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = _before;

    [Theory]
    [InlineData("en-GB")]
    [InlineData("es-ES")]
    public void Lines_EveryCautionThereIs_HasItsSentenceAndWhatHelps(string language)
    {
        Speak(language);
        foreach (var caution in Enum.GetValues<ResponseCaution>().Where(c => c != ResponseCaution.None))
        {
            var line = Assert.Single(CautionText.Lines(caution, []));
            Assert.Equal(caution, line.Caution);
            Assert.EndsWith(".", line.Sentence);
            Assert.EndsWith(".", line.Help);
        }
    }

    [Fact]
    public void Lines_Several_EachOnceAndNoneWithoutCautions()
    {
        Assert.Empty(CautionText.Lines(ResponseCaution.None, []));
        var lines = CautionText.Lines(ResponseCaution.OneSided | ResponseCaution.MostlyAssumption | ResponseCaution.NotConverged, []);
        Assert.Equal([ResponseCaution.NotConverged, ResponseCaution.OneSided, ResponseCaution.MostlyAssumption], lines.Select(l => l.Caution));
    }

    [Fact]
    public void Lines_NoTrials_SaysOnlyThat() =>
        Assert.Equal(ResponseCaution.NoTrials, Assert.Single(CautionText.Lines(ResponseCaution.NoTrials | ResponseCaution.MostlyAssumption | ResponseCaution.OneSided, [])).Caution);

    [Fact]
    public void Lines_ChoiceMatteredForAllLevels_SaysItInTries()
    {
        // By hand: 3 of 10 is a logit of −.8473; stretched 1.5 times −1.271, which is 2.2 of 10. The levels as a whole come before a slope, however far that is.
        ChoiceComparison[] choice = [new(CoefficientKind.DoseSlope, 0, 1, 2, .1), new(null, 0, 1, 1.5, .2)];
        var line = Assert.Single(CautionText.Lines(ResponseCaution.ChoiceMattered, choice));
        Assert.Equal("A level that is reached in 3 of 10 tries where the middle one is reached in 5 comes to 2.2 in the other reading.", line.Extent);
        Assert.Equal("Two levels tried by everybody next time would help.", line.Help);
    }

    [Fact]
    public void Lines_ChoiceMatteredForTheDose_SaysBothReadings()
    {
        // By hand: twice the dose at slope 1 is a logit of −ln 2, 1 in 3; at slope 2 −2 ln 2, 1 in 5.
        var line = Assert.Single(CautionText.Lines(ResponseCaution.ChoiceMattered, [new(CoefficientKind.DoseSlope, 0, 1, 2, .1), new(null, 0, 1, 1.1, .2)]));
        Assert.Equal("Where 5 of 10 tries are reached, a dose twice as hard leaves 3.3 in one reading and 2 in the other.", line.Extent);
    }

    [Fact]
    public void Lines_ChoiceMatteredForTheOrder_SaysWhichWay()
    {
        Assert.Contains("more strongly", CautionText.Lines(ResponseCaution.ChoiceMattered, [new(CoefficientKind.Order, 0, 1, 2, .1)])[0].Extent);
        Assert.Contains("less strongly", CautionText.Lines(ResponseCaution.ChoiceMattered, [new(CoefficientKind.Order, 0, 1, .2, .1)])[0].Extent);
    }

    private static void Speak(string language) =>
        (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (CultureInfo.GetCultureInfo(language), CultureInfo.GetCultureInfo(language));
}
