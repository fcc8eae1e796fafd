using System.Globalization;
using System.Text.Json;
using Slantwise.Engines.Planning.Practice;
using Slantwise.Records.Planning;

namespace Slantwise.Records.Tests.Planning;

public sealed class PlanningChoiceTests
{
    private static readonly JsonSerializerOptions Web = new(JsonSerializerDefaults.Web);

    private static readonly PlanningChoice All = new()
    {
        MatCount = 8, PupilsAMat = 3, PerformersAMat = 2, PartnersATurn = 1, ObserversATurn = 1, ActionS = 12.5, TrialsATurn = 2, RestS = 15, RecordS = 0, RecordedBy = Recording.Observer,
        SetCount = 3, TrialCount = 4, BetweenSetsS = 45, TalkMin = 4.5, SideStationCount = 1, ChangeS = 30, Seed = 7,
    };

    [Fact]
    public void Read_WrittenWithEverything_IsTheSameChoice()
    {
        Assert.All(typeof(PlanningChoice).GetProperties().Where(p => p.CanWrite && p.GetMethod is { IsStatic: false }), p => Assert.NotNull(p.GetValue(All)));
        var text = JsonSerializer.Serialize(All, Web);
        Assert.Equal(All, JsonSerializer.Deserialize<PlanningChoice>(text, Web));
        Assert.DoesNotContain("isWithin", text);
    }

    // As lessons kept it before there was more to choose.
    [Fact]
    public void Read_FromBefore_SaysNothingOfWhatIsNew() => Assert.Equal(
        new PlanningChoice { MatCount = 6, RestS = 20 },
        JsonSerializer.Deserialize<PlanningChoice>("""{"matCount":6,"pupilsAMat":null,"restS":20,"recordS":null,"seed":null,"isWithin":true}""", Web));

    [Theory]
    [InlineData(0, 1, 10, 5, false)]
    [InlineData(5, 1, 10, 5, false)]
    [InlineData(4, 5, 10, 5, false)]
    [InlineData(4, 4, 0.4, 5, false)]
    [InlineData(4, 4, 601, 5, false)]
    [InlineData(4, 4, 0.5, 121, false)]
    [InlineData(4, 4, 0.5, 120, true)]
    public void IsWithin_AtTheEndsOfItsRanges_IsTrueOnlyInside(int performers, int partners, double actionS, double talkMin, bool expected) =>
        Assert.Equal(expected, new PlanningChoice { PerformersAMat = performers, PartnersATurn = partners, ActionS = actionS, TalkMin = talkMin }.IsWithin);

    [Theory]
    [InlineData("en-GB", "tries in a row: 2", "written by somebody who waits", "one try: 12.5 s")]
    [InlineData("es-ES", "intentos seguidos: 2", "anota alguien que espera", "un intento: 12,5 s")]
    public void Reading_OfEverything_NamesEachInTheReadersLanguage(string culture, params string[] expected)
    {
        var said = PlanningChoiceReading.Of(All, CultureInfo.GetCultureInfo(culture));
        // Mats are named by pupils a mat here.
        Assert.Equal(typeof(PlanningChoice).GetProperties().Count(p => p.CanWrite) - 1, said.Count);
        Assert.All(expected, e => Assert.Contains(e, said));
        Assert.All(said, s => Assert.DoesNotContain('{', s));
        Assert.Empty(PlanningChoiceReading.Of(PlanningChoice.Usual, CultureInfo.GetCultureInfo(culture)));
    }
}
