using System.Text;
using System.Text.Json.Nodes;

namespace Slantwise.Surface.Tests.Host.Studies;

/// <summary>Agreement on the command line against published examples.</summary>
public sealed class AgreementCommandTests
{
    // Source: [Gwet2019] irrCAC 1.0, cont3x3abstractors; weighted kappas and errors also by vcd 1.4.11 [Meyer2023].
    private static readonly int[,] Abstractors = { { 13, 0, 0 }, { 0, 20, 7 }, { 0, 4, 56 } };

    [Fact]
    public async Task Agreement_OfTheAbstractors_IsThatOfOtherPrograms()
    {
        using var folder = new TempFolder();
        var answer = await StudyRun.JsonAsync("agreement", Table(folder, Abstractors));
        Assert.Equal(0.89, Value(answer, "agreement"), 1e-12);
        Assert.Equal((0.7964094022, 0.0589107183), (Value(answer, "cohenKappa", "identity"), Error(answer, "cohenKappa", "identity")), Both(1e-9));
        Assert.Equal(0.8429020280, Value(answer, "cohenKappa", "linear"), 1e-9);
        Assert.Equal((0.8921568627, 0.0353515076), (Value(answer, "cohenKappa", "quadratic"), Error(answer, "cohenKappa", "quadratic")), Both(1e-9));
        Assert.Equal((0.849330548, 0.04321746752), (Value(answer, "gwetAc1", "identity"), Error(answer, "gwetAc1", "identity")), Both(1e-9));
        Assert.Equal(0.940236879, Value(answer, "gwetAc2", "quadratic"), 1e-9);
        Assert.Equal(0.796239696, Value(answer, "scottPi"), 1e-9);
        Assert.Equal(0.797258498, Value(answer, "krippendorffAlpha", "nominal"), 1e-9);
        Assert.Equal(100, answer["pairedUnitCount"].Number());
        Assert.All(answer["coefficients"]!.AsArray(), c => Assert.Equal(100, c!["count"].Number()));
    }

    [Fact]
    public async Task Agreement_WherePupilsAreSingle_HasTheJackknifesError()
    {
        using var folder = new TempFolder();
        var answer = await StudyRun.JsonAsync("agreement", Table(folder, Abstractors, hasPupils: true));
        var over = answer["overPupils"]!;
        Assert.Equal(100, over["pupilCount"].Number());
        // By hand, to the digits given: with one thing a pupil, leaving out pupils gives .05949 where the formula gives .05891.
        Assert.Equal(0.05949, One(over["coefficients"], "cohenKappa", "identity")["errorFraction"].Number(), 5e-6);
    }

    [Fact]
    public async Task Agreement_OfCohensTable_IsHis()
    {
        using var folder = new TempFolder();
        var answer = await StudyRun.JsonAsync("agreement", Table(folder, new[,] { { 88, 14, 18 }, { 10, 40, 10 }, { 2, 6, 12 } }));
        // Source: [Cohen1968]; R's vcd for the digits.
        Assert.Equal(0.491525424, Value(answer, "cohenKappa", "identity"), 1e-9);
    }

    [Fact]
    public async Task Agreement_WhereOneAnswerIsCommon_WarnsOfKappa()
    {
        using var folder = new TempFolder();
        var file = Table(folder, new[,] { { 118, 5 }, { 2, 0 } });
        var answer = await StudyRun.JsonAsync("agreement", file);
        // By hand: kappa falls below 0 though 118 of 125 agree; exact McNemar of 5 against 2 is 2 · 29/128.
        Assert.Equal(-0.023391813, Value(answer, "cohenKappa", "identity"), 1e-9);
        Assert.Equal(0.940776338, Value(answer, "gwetAc1", "identity"), 1e-9);
        Assert.Equal(0.453125, answer["balance"]!["chanceFraction"].Number(), 1e-12);
        Assert.Contains("mostlyOneCategory", answer["cautions"]!.AsArray().Select(c => c!.GetValue<string>()));
        Assert.Contains("! More than 85 in 100", (await HostProgram.RunAsync("agreement", file)).Output);
    }

    [Fact]
    public async Task Agreement_WhereAllGiveOneAnswer_SaysUndefinedAsUndefined()
    {
        using var folder = new TempFolder();
        var file = folder.Write("ticks.csv", "pupil,teacher\n" + string.Concat(Enumerable.Repeat("yes,yes\n", 25)));
        var answer = await StudyRun.JsonAsync("agreement", file);
        Assert.Equal(["pupil", "teacher"], answer["raters"]!.AsArray().Select(r => r!["rater"]!.GetValue<string>()));
        foreach (var (name, weighting) in new[] { ("cohenKappa", "identity"), ("scottPi", null), ("krippendorffAlpha", "nominal") })
        {
            var one = One(answer["coefficients"], name, weighting);
            Assert.False(one["isDefined"]!.GetValue<bool>());
            Assert.Null(one["valueFraction"]);
            Assert.StartsWith("not defined", one["whyNot"]!.GetValue<string>());
        }
        Assert.Equal(1.0, Value(answer, "gwetAc1", "identity"));
        var said = await HostProgram.RunInAsync(null, "es_ES.UTF-8", "agreement", file);
        Assert.Matches("Kappa de Cohen.* 25 +– +– +– +no está definido", said.Output);
    }

    [Fact]
    public async Task Agreement_OfFleissDiagnoses_IsHis()
    {
        // Source: [Fleiss1971], 30 patients by six raters, five diagnoses; counts as in the R package irr.
        const string counts = "00060 03003 01401 00006 03030 20400 00402 20310 20040 00006 10050 11040 03300 10050 02031 00501 30012 51000 02040 10203 00006 01050 02013 20040 10041 05010 40002 02040 10500 00006";
        using var folder = new TempFolder();
        var text = new StringBuilder("unit,rater,value\n");
        foreach (var (patient, i) in counts.Split(' ').Select((p, i) => (p, i)))
        {
            var rater = 0;
            for (var diagnosis = 0; diagnosis < 5; diagnosis++)
                for (var n = patient[diagnosis] - '0'; n > 0; n--) text.Append(null, $"p{i},r{rater++},{"ABCDE"[diagnosis]}\n");
        }
        var answer = await StudyRun.JsonAsync("agreement", folder.Write("diagnoses.csv", text.ToString()));
        Assert.Equal(0.430244520, Value(answer, "fleissKappa"), 1e-9);
        Assert.Equal(0.447884516, Value(answer, "gwetAc1", "identity"), 1e-9);
        Assert.DoesNotContain(answer["coefficients"]!.AsArray(), c => c!["weighting"]?.GetValue<string>() is "ordinal" or "interval");
    }

    [Fact]
    public async Task Agreement_OfKrippendorffsExample_IsHis()
    {
        var answer = await StudyRun.JsonAsync("agreement", StudyRun.Data("krippendorff.csv"));
        // Source: [Krippendorff2011], example C; irr 0.84.1 [Gamer2019] for the digits.
        Assert.Equal(0.743421053, Value(answer, "krippendorffAlpha", "nominal"), 1e-9);
        Assert.Equal(0.815387504, Value(answer, "krippendorffAlpha", "ordinal"), 1e-9);
        Assert.Equal(0.849107143, Value(answer, "krippendorffAlpha", "interval"), 1e-9);
        Assert.Equal(0.797402775, Value(answer, "krippendorffAlpha", "ratio"), 1e-9);
        Assert.Equal((12, 11), ((int)answer["unitCount"]!, (int)answer["pairedUnitCount"]!));
        Assert.Contains("different numbers of judges", One(answer["coefficients"], "fleissKappa", null)["whyNot"]!.GetValue<string>());
    }

    [Fact]
    public async Task Agreement_OfAColumnForEachJudge_IsThatOfARowForEachJudgement()
    {
        using var folder = new TempFolder();
        var wide = await StudyRun.JsonAsync("agreement", folder.Write("w.csv", "unit,A,B\nx,1,2\ny,2,2\nz,,1\n"));
        var rows = await StudyRun.JsonAsync("agreement", folder.Write("l.csv", "unit,rater,value\nx,A,1\nx,B,2\ny,A,2\ny,B,2.0\nz,A,NA\nz,B,1\n"));
        Assert.Equal(wide.ToJsonString(), rows.ToJsonString());
    }

    [Fact]
    public async Task Agreement_OfAFewThings_GivesCountsOnly()
    {
        using var folder = new TempFolder();
        var run = await HostProgram.RunAsync("agreement", folder.Write("w.csv", "A,B\n1,2\n2,2\n1,1\n"));
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("counts only", run.Output);
        Assert.DoesNotContain("kappa", run.Output, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Agreement_WithCategoriesNamed_WeighsThemInThatOrder()
    {
        using var folder = new TempFolder();
        var file = folder.Write("w.csv", "A,B\nnever,often\nsome,some\noften,often\nnever,some\n");
        var answer = await StudyRun.JsonAsync("agreement", file, "--categories", "never,some,often");
        Assert.Equal(["never", "some", "often"], answer["categories"]!.AsArray().Select(c => c!.GetValue<string>()));
        // By hand: weights 0, 1, 1, 1/2 over four agree at 5/8; margins 2, 1, 1 and 0, 2, 2 would at 1/2 · 1/4 + 1/4 · 3/4 + 1/4 · 3/4 = 1/2.
        Assert.Equal(0.25, Value(answer, "cohenKappa", "linear"), 1e-12);
        var run = await HostProgram.RunAsync("agreement", file, "--categories", "never,often");
        Assert.Equal(2, run.ExitCode);
        Assert.Contains("line 3, column “A”: “some” is not possible here. Possible: never, often.", run.Error);
    }

    [Fact]
    public async Task Agreement_WhereNothingWasJudgedByTwo_SaysUndefinedAsUndefined()
    {
        using var folder = new TempFolder();
        var answer = await StudyRun.JsonAsync("agreement", folder.Write("w.csv", "A,B\nNA,2\n1,\n"));
        Assert.Equal((2, 0), ((int)answer["unitCount"]!, (int)answer["pairedUnitCount"]!));
        Assert.All(answer["coefficients"]!.AsArray(), c => Assert.Equal("not defined: nothing was judged by two", c!["whyNot"]!.GetValue<string>()));
    }

    [Fact]
    public async Task Agreement_OfAnOlderSpreadsheet_SaysThatAccentsWereGuessed()
    {
        using var folder = new TempFolder();
        File.WriteAllBytes(folder.At("w.csv"), System.Text.Encoding.Latin1.GetBytes("Íñigo,Ana\n1,1\n"));
        var run = await HostProgram.RunAsync("agreement", folder.At("w.csv"));
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("Windows-1252", Assert.Single(run.ErrorLines));
        Assert.Contains("Íñigo", run.Output);
    }

    [Theory]
    [InlineData("A\n1\n", "a column for each of two or more judges")]
    [InlineData("unit,rater,value\nx,A,1\ny,A,2\n", "two judges or more are needed; there is: A")]
    [InlineData("unit,rater,value\nx,A,1\nx,A,2\n", "line 3, column “rater”: “A” judged “x” on line 2 already")]
    [InlineData("rater,value\nA,1\nB,1\n", "there is no column “unit”")]
    [InlineData("pupil,A,A\np,1,1\n", "“A”")]
    [InlineData("unit,rater,value,pupil\nx,A,1,p\nx,B,1,q\n", "“x” belongs to “p” before and to “q” here")]
    public async Task Agreement_OfATableThatCannotBe_SaysWhy(string text, string said)
    {
        using var folder = new TempFolder();
        var run = await HostProgram.RunAsync("agreement", folder.Write("j.csv", text));
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(said, run.Error);
    }

    private static JsonNode One(JsonNode? list, string name, string? weighting) =>
        list!.AsArray().Single(c => c!["name"]!.GetValue<string>() == name && c["weighting"]?.GetValue<string>() == weighting)!;

    private static double Value(JsonObject answer, string name, string? weighting = null) => One(answer["coefficients"], name, weighting)["valueFraction"].Number();

    private static double Error(JsonObject answer, string name, string? weighting = null) => One(answer["coefficients"], name, weighting)["errorFraction"].Number();

    private static EqualityComparer<(double, double)> Both(double tolerance) =>
        EqualityComparer<(double, double)>.Create((a, b) => Math.Abs(a.Item1 - b.Item1) <= tolerance && Math.Abs(a.Item2 - b.Item2) <= tolerance);

    private static string Table(TempFolder folder, int[,] counts, bool hasPupils = false)
    {
        var text = new StringBuilder(hasPupils ? "pupil,first,second\n" : "first,second\n");
        var pupil = 0;
        for (var i = 0; i < counts.GetLength(0); i++)
            for (var j = 0; j < counts.GetLength(0); j++)
                for (var n = counts[i, j]; n > 0; n--) text.Append(null, $"{(hasPupils ? $"{pupil++}," : "")}{i + 1},{j + 1}\n");
        return folder.Write("table.csv", text.ToString());
    }
}
