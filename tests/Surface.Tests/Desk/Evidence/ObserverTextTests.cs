using Slantwise.Desk.Pages.Evidence;
using Slantwise.Engines.Statistics.Agreement;
using Slantwise.Records.Evidence.SelfChecks;

namespace Slantwise.Surface.Tests.Desk.Evidence;

public sealed class ObserverTextTests
{
    private static ObserverChecks Checks(int bothMet, int onlyFirst, int onlySecond, int neither)
    {
        var table = AgreementTable.Of(new[,] { { neither, onlySecond }, { onlyFirst, bothMet } });
        return new(JudgeAgreement.Of([table], AgreementWeights.Identity(2), .9), ObserverAgreement.Of(table), 2, []);
    }

    [Fact]
    public void Same_UnderTenChecks_GivesCountsOnly()
    {
        using var english = new Spoken("en-GB");
        Assert.Equal("Two observers gave the same answer in 3 of 4 checks (2 cues, 1 pupils). Too few for a range.", ObserverText.Same(Checks(2, 1, 0, 1)));
        Assert.Equal("", ObserverText.Figures(Checks(2, 1, 0, 1)));
    }

    [Fact]
    public void Figures_OneAnswerThroughout_KappaIsSaidToBeUndefined()
    {
        using var english = new Spoken("en-GB");
        Assert.Equal("Beyond habit (kappa): not defined: one answer throughout. Beyond doubt (AC1): 1.00.", ObserverText.Figures(Checks(12, 0, 0, 0)));
        Assert.EndsWith("Likely 8 to 10 in 10.", ObserverText.Same(Checks(12, 0, 0, 0)));
    }

    [Fact]
    public void Parts_MetAndNotMet_AreSaidApart()
    {
        using var english = new Spoken("en-GB");
        Assert.Equal("Met: both saw it in 6 of the 9 that either saw. Not met: both missed it in 2 of the 5 that either missed.", ObserverText.Parts(Checks(6, 2, 1, 2)));
    }
}
