using CsCheck;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>Random classes so small that brute force can follow.</summary>
internal static class TinyClasses
{
    /// <summary>Three pupils, three levels (two of one task), up to nine trials in up to three lessons.</summary>
    public static Gen<ResponseData> Of(bool isTimed, int lessons, bool hasCovariates) =>
        from trials in Trial(isTimed, lessons).Array[4, 9]
        from order in Gen.Double[-1, 1].Array[3]
        from predictions in Gen.Double[0, 1].Array[3]
        from missing in Gen.Int[0, 3]
        select new ResponseData(
            [.. predictions.Select((p, i) => new ResponsePupil(hasCovariates && i != missing ? new FirstPrediction(i, p) : null))],
            [.. new[] { LevelDose.Hold(3), LevelDose.Hold(8), LevelDose.Distance(4) }.Select((dose, j) =>
                new ResponseLevel(j / 2, dose) { OrderLogits = hasCovariates ? order[j] : null })],
            trials);

    private static Gen<ResponseTrial> Trial(bool isTimed, int lessons) =>
        from pupil in Gen.Int[0, 2]
        from level in Gen.Int[0, isTimed ? 1 : 2]
        from lesson in Gen.Int[0, lessons - 1]
        from success in Gen.Bool
        from tenths in Gen.Int[0, 79]
        let isShort = tenths / 10.0 < (level == 0 ? 3 : 8)
        select ResponseTrial.Single(pupil, level, lesson, success, isTimed && !success && isShort ? tenths / 10.0 : null);
}
