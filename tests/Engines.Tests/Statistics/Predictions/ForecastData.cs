using CsCheck;
using Slantwise.Engines.Statistics.Predictions;

namespace Slantwise.Engines.Tests.Statistics.Predictions;

/// <summary>The predictions several tests look at.</summary>
internal static class ForecastData
{
    private static readonly double[] WilksChances = [0, .05, .1, .2, .3, .4, .5, .6, .7, .8, .9, 1];
    private static readonly int[] WilksObserved = [6, 19, 59, 150, 277, 377, 511, 587, 723, 779, 934, 933];
    private static readonly int[] WilksUse = [4112, 671, 1833, 986, 616, 366, 303, 275, 245, 220, 170, 203];

    // Source: [Wilks2006] table 7.3, chances of rain, as in the help of R's verification; two of its uses are mistyped there (.245 and .203
    // for .0245 and .0203: else they sum to 1.40). Ten million trials make whole numbers of shares with three and four digits.
    public static IReadOnlyList<Forecast> Wilks { get; } =
        WilksChances.Select((chance, i) => new Forecast(chance, WilksUse[i] * WilksObserved[i], WilksUse[i] * 1000)).ToArray();

    // By hand: five single trials.
    public static IReadOnlyList<Forecast> Five { get; } = [new(.9, 1, 1), new(.8, 1, 1), new(.6, 0, 1), new(.5, 1, 1), new(.3, 0, 1)];

    /// <summary>One to twenty predicted sets, chances in tenths: ties of all kinds.</summary>
    public static Gen<Forecast[]> Any { get; } = Gen.Select(Gen.Int[0, 10], Gen.Int[1, 6]).SelectMany((tenths, n) =>
        Gen.Int[0, n].Select(s => new Forecast(tenths / 10.0, s, n))).Array[1, 20];

    /// <summary>Each trial on its own: the chance said and whether it succeeded.</summary>
    public static List<(double Said, int Came)> Trials(IEnumerable<Forecast> forecasts) => forecasts
        .SelectMany(f => Enumerable.Range(0, f.TrialCount).Select(i => (f.PredictedFraction, i < f.SuccessCount ? 1 : 0))).ToList();
}
