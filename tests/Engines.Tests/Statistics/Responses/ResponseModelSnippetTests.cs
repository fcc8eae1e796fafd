using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>The lines that docs/engines/response-model.md shows.</summary>
public sealed class ResponseModelSnippetTests
{
    [Fact]
    public void Fit_AsTheDocsShow_GivesAChanceWithItsRange()
    {
        var (data, pupil, level) = (Tables.SimulatedClass(), 4, 7);
        var fit = ResponseModel.Fit(data);
        var chance = fit.Chance(pupil, level, fit.LastLesson + 1)!;
        var (low, high) = chance.Range(0.9);
        Assert.InRange(chance.ChanceFraction, low, high);
        Assert.Equal(5, fit.LastLesson);
    }
}
