using CsCheck;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Engines.Tests.Statistics.Responses;

public sealed class ResponseModelPlainTests
{
    private static readonly ResponseOptions Given = new() { AbilitySdLogits = 1.1, ResidualSdLogits = 0.6, DriftSdLogits = 0, NodeCount = 25, ToleranceSd = 1e-10 };

    [Fact]
    public void Fit_TicksOfATinyClass_PeaksAsThePlainVersion() =>
        TinyClasses.Of(false, 3, false).Sample(data => PlainComparison.Check(data, Given, 1e-5, 1e-4), iter: 12);

    [Fact]
    public void Fit_OrderAndPredictions_PeaksAsThePlainVersion() =>
        TinyClasses.Of(false, 2, true).Sample(data => PlainComparison.Check(data, Given, 1e-5, 1e-4), iter: 12);
}
