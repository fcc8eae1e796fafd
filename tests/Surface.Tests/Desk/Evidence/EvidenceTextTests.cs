using System.Globalization;
using Slantwise.Desk.Pages.Evidence;
using Slantwise.Desk.Words;
using Slantwise.Engines.Statistics;
using Slantwise.Records.Entries;
using Slantwise.Records.Evidence;
using Slantwise.Records.Lessons;
using Slantwise.Records.Tasks;
using Slantwise.Surface.Tests.Desk.Results;

namespace Slantwise.Surface.Tests.Desk.Evidence;

public sealed class EvidenceTextTests : IDisposable
{
    private readonly (CultureInfo Numbers, CultureInfo Words) _before = (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture);

    public EvidenceTextTests() => Speak("en-GB");

    public void Dispose() => (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = _before;

    [Theory]
    [InlineData(0, 0, "no tries", "")]
    [InlineData(1, 1, "1 of 1 try", "not enough tries yet")]
    [InlineData(3, 4, "3 of 4 tries", "not enough tries yet")]
    // Wilson at 90 % for 8 of 10: 0.541 to 0.931, by hand from [Wilson1927]; in tenths, outwards: 5 to 10.
    [InlineData(8, 10, "8 of 10 tries", "likely 5 to 10 in 10")]
    public void Range_Share_SaysWhatItsTriesCanSay(int successCount, int trialCount, string count, string range)
    {
        var share = SuccessShare.Of(Enumerable.Range(1, trialCount).Select(i => new TrialEvidence(i, i <= successCount, null, Guid.NewGuid())));
        Assert.Equal(count, EvidenceText.Count(share));
        Assert.Equal(range, EvidenceText.Range(share));
        Assert.Equal(trialCount < 5, EvidenceText.IsMuted(share));
    }

    [Fact]
    public void Of_Predictions_SayTheDirectionBeforeTheNumber()
    {
        // Three sets, 5 predicted and 3, 3 and 2 reached: 7 too many in 3 sets, 2.3 a set.
        var typist = new Typist(SampleLesson.Sheet()).Press("2511100s{Enter}2511100s{Enter}2511000s").Leave();
        var view = EvidenceView.Of(SampleLesson.Record(SampleLesson.Sheet()) with { Entries = typist.Log });

        Assert.Equal("More predicted than came: +2.3 tries a set on average, 3 sets.", EvidenceText.Of(view.Class.Predictions));
        Assert.False(EvidenceText.IsMuted(view.Class.Predictions));
        Assert.Equal("2 → 2 → 2", EvidenceText.Path(view.Pupils.Single(p => p.PupilId == SampleLesson.Ada.Id).Tasks[0].Sets));
    }

    [Fact]
    public void What_EveryFactTyped_IsASentence()
    {
        var typist = new Typist(SampleLesson.Sheet()).Press("24 1011{Down}{Undo}13h{Absent}").Leave();
        var record = SampleLesson.Record(SampleLesson.Sheet()) with { Entries = typist.Log };
        var wording = new EntryWording(record);

        foreach (var language in new[] { "en-GB", "es-ES" })
        {
            Speak(language);
            foreach (var entry in typist.Log)
            {
                Assert.NotEmpty(wording.What(entry));
                Assert.DoesNotContain("{", wording.What(entry), StringComparison.Ordinal);
                Assert.Equal("Ada", wording.Who(entry));
            }
        }
    }

    [Fact]
    public void Say_EveryValueWithAWord_HasOneInBothLanguages()
    {
        string[] keys =
        [
            .. Enum.GetNames<VisitTopic>().Select(n => "Topic" + n), .. Enum.GetNames<VisitForm>().Select(n => "Form" + n),
            .. Enum.GetNames<SuccessBand>().Select(n => "After" + n), .. Enum.GetNames<NextLevel>(), .. Enum.GetNames<PhaseKind>().Select(n => "Phase" + n),
            .. Enum.GetNames<EntrySource>().Select(n => "From" + n),
            .. Enum.GetNames<PredictionDirection>().SelectMany(n => new[] { $"Predicted{n}One", $"Predicted{n}Many" }),
        ];
        foreach (var language in new[] { "en-GB", "es-ES" })
        {
            Speak(language);
            Assert.All(keys, key => Assert.NotEmpty(EvidenceWords.Say(key)));
            Assert.All(Enum.GetValues<DoseKind>(), kind => Assert.NotEmpty(EvidenceText.Of(new Dose(kind, 2.5m))));
        }
        Assert.Contains("2,5", EvidenceText.Of(new Dose(DoseKind.HoldS, 2.5m)), StringComparison.Ordinal);
    }

    private static void Speak(string language) =>
        (CultureInfo.CurrentCulture, CultureInfo.CurrentUICulture) = (CultureInfo.GetCultureInfo(language), CultureInfo.GetCultureInfo(language));
}
