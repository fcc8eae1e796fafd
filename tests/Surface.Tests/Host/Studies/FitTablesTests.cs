using System.Text.Json.Nodes;
using Slantwise.Engines.Statistics.Responses;

namespace Slantwise.Surface.Tests.Host.Studies;

/// <summary>How the tables of a fit are read: everything that can stand in them, and everything that cannot.</summary>
public sealed class FitTablesTests
{
    private const string Levels = """
        level,task,dose,measure,order,spin
        tuck,headstand,5,hold,2,0
        straight,headstand,10,hold,2,0.5
        skip,rope,8,repetitions,1,1
        """;

    private const string Trials = """
        pupil,level,lesson,trials,success,held_s
        Ana,tuck,1,1,yes,
        Ana,straight,1,1,no,4.2
        Bo,tuck,1,1,no,2.5
        Bo,skip,2,5,3,
        Ana,straight,2,1,yes,10
        Cy,skip,1,4,4,
        Cy,tuck,2,1,no,
        """;

    private const string Predictions = """
        pupil,level,predicted
        Ana,tuck,0.8
        Cy,skip,0.5
        """;

    [Fact]
    public async Task Fit_OfAllTables_IsTheEnginesOwn()
    {
        using var folder = new TempFolder();
        var answer = await StudyRun.JsonAsync(
            "fit", "--trials", folder.Write("t.csv", Trials), "--levels", folder.Write("l.csv", Levels), "--predictions", folder.Write("p.csv", Predictions), "--covariates", "spin", "--at", "2");

        // The same class by hand: lessons from the first, tasks rope before headstand.
        var order = OrderScores.Of([1, 0]);
        var fit = ResponseModel.Fit(new(
            [new(new FirstPrediction(0, 0.8)), new(), new(new FirstPrediction(2, 0.5))],
            [
                new(0, LevelDose.Hold(5)) { OrderLogits = order[0], Covariates = [0] },
                new(0, LevelDose.Hold(10)) { OrderLogits = order[0], Covariates = [0.5] },
                new(1, LevelDose.Repetitions(8)) { OrderLogits = order[1], Covariates = [1] },
            ],
            [
                ResponseTrial.Single(0, 0, 0, true), ResponseTrial.Single(0, 1, 0, false, 4.2), ResponseTrial.Single(1, 0, 0, false, 2.5), new(1, 2, 1, 3, 5),
                ResponseTrial.Single(0, 1, 1, true, 10), new(2, 2, 0, 4, 4), ResponseTrial.Single(2, 0, 1, false),
            ]), new() { ToleranceSd = 1e-9 });
        Assert.Equal(fit.EvidenceNats!.Value, answer["evidenceNats"].Number());
        for (var j = 0; j < 3; j++) Assert.Equal(fit.Difficulty(j)!.Value.MeanLogits, answer["levels"]![j]!["difficulty"]!["meanLogits"].Number());
        for (var i = 0; i < 3; i++) Assert.Equal(fit.Ability(i, 1).MeanLogits, answer["pupils"]![i]!["ability"]!["meanLogits"].Number());
        Assert.Equal(["middle", "doseSlope", "order", "levelCovariate", "growth", "prediction", "noPrediction"], answer["coefficients"]!.AsArray().Select(c => c!["kind"]!.GetValue<string>()));
        Assert.Equal("spin", answer["coefficients"].Named("kind", "levelCovariate")["of"]!.GetValue<string>());
        Assert.Equal((1, 2), ((int)answer["firstLesson"]!, (int)answer["lastLesson"]!));
    }

    [Fact]
    public async Task Fit_OfASpanishTable_IsThatOfTheEnglishOne()
    {
        using var folder = new TempFolder();
        var english = await StudyRun.JsonAsync("fit", "--trials", folder.Write("e.csv", "pupil,level,dose,success,held_s\nAna,a,5.5,1,\nBo,a,5.5,0,2.25\nBo,b,10,0,\n"));
        var spanish = await StudyRun.JsonAsync("fit", "--trials", folder.Write("s.csv", "Alumno;Nivel;Dosis;Éxito;aguante_s\nAna;a;5,5;sí;\nBo;a;5.5;no;2,25\nBo;b;10;no;NA\n"));
        Assert.Equal(english.ToJsonString(), spanish.ToJsonString());
    }

    [Fact]
    public async Task Fit_TrialsInOneRow_CountAsOnesOnTheirOwn()
    {
        using var folder = new TempFolder();
        var single = await StudyRun.JsonAsync("fit", "--trials", folder.Write("a.csv", "pupil,level,success\nAna,a,1\nAna,a,0\nAna,a,1\nBo,a,0\n"));
        var together = await StudyRun.JsonAsync("fit", "--trials", folder.Write("b.csv", "pupil,level,trials,success\nAna,a,3,2\nBo,a,1,0\n"));
        Assert.Equal(single.ToJsonString(), together.ToJsonString());
    }

    [Fact]
    public async Task Fit_OfAColumnNobodyKnows_PointsItOutAndGoesOn()
    {
        using var folder = new TempFolder();
        var file = folder.Write("t.csv", "pupil,level,succes,success\nAna,a,1,1\nBo,a,0,0\n");
        var run = await HostProgram.RunAsync("fit", "--trials", file);
        Assert.Equal(0, run.ExitCode);
        Assert.Contains("“succes”", Assert.Single(run.ErrorLines));
        Assert.Equal("ColumnNotUsed", (await StudyRun.JsonAsync("fit", "--trials", file))["notes"]![0]!["key"]!.GetValue<string>());
    }

    [Fact]
    public async Task Fit_OfManyMistakes_NamesEachWithLineColumnAndWhatIsPossible()
    {
        using var folder = new TempFolder();
        var file = folder.Write("bad.csv", """
            pupil,level,dose,lesson,success,held_s
            a,l1,5,0,1,
            b,l1,6,0,2,
            ,l2,x,0,1,
            c,l2,5,-1,yes,3
            d,l3,,0,no,2.5
            e,l1,5,0,no,2.5,7
            """);
        var run = await HostProgram.RunAsync("fit", "--trials", file);
        Assert.Equal(2, run.ExitCode);
        Assert.Empty(run.Output);
        foreach (var said in new[]
        {
            "line 3, column “level”: for the level “l1” dose is “6” here and “5” in bad.csv, line 2",
            "line 3, column “success”: “2” is not possible here. Possible: 1 or 0",
            "line 4, column “pupil”: the field is empty. Possible: a name.",
            "line 4, column “dose”: “x” is not possible here. Possible: a number above 0.",
            "line 5, column “lesson”: “-1” is not possible here. Possible: a whole number from 0 to 10000.",
            "line 6, column “held_s”: a time is measured against the seconds asked for, and the level “l3” has no dose in seconds.",
            "line 7: the row has 7 fields and the headings are 6",
        }) Assert.Contains(said, run.Error);
        Assert.Equal("Nothing is computed: 7 things in bad.csv cannot be taken, as named above.", run.ErrorLines[^1]);
    }

    // The tables by letter: (t) trials, (l) levels, (p) predictions; the last is what has to be said.
    [Theory]
    [InlineData("pupil,level\nAna,a", "", "", "there is no column “success”")]
    [InlineData("pupil,level,success", "", "", "has headings and no row")]
    [InlineData("", "", "", "is empty")]
    [InlineData("pupil,level,success\nAna,a,1", "level,dose\nb,5", "", "the level “a” is not in l.csv")]
    [InlineData("pupil,level,success\nAna,a,1", "level,dose\na,5\na,5", "", "the level “a” stands in the table already")]
    [InlineData("pupil,level,success\nAna,a,1", "level,measure,dose\na,weight,5", "", "Possible: hold, repetitions")]
    [InlineData("pupil,level,success\nAna,a,1", "level,measure,dose\na,repetitions,2.5", "", "Possible: a whole number from 1")]
    [InlineData("pupil,level,success\nAna,a,1", "level,task,order\na,t,1\nb,t,2", "", "needs one place in the order")]
    [InlineData("pupil,level,success\nAna,a,1", "", "pupil,level,predicted\nBo,a,0.5", "“Bo” has no trial")]
    [InlineData("pupil,level,success\nAna,a,1", "", "pupil,level,predicted\nAna,b,0.5", "the level “b” is in no other table")]
    [InlineData("pupil,level,success\nAna,a,1", "", "pupil,level,predicted\nAna,a,80", "Possible: a number from 0 to 1")]
    [InlineData("pupil,level,success\nAna,a,1", "", "pupil,level,predicted\nAna,a,0.5\nAna,a,0.6", "there can be one only")]
    [InlineData("pupil,level,trials,success,held_s,dose\nAna,a,3,2,4,5", "", "", "a time belongs to one trial")]
    public async Task Fit_OfATableThatCannotBe_SaysWhy(string trials, string levels, string predictions, string said)
    {
        using var folder = new TempFolder();
        string[] more = [.. levels.Length > 0 ? ["--levels", folder.Write("l.csv", levels)] : Array.Empty<string>(), .. predictions.Length > 0 ? ["--predictions", folder.Write("p.csv", predictions)] : Array.Empty<string>()];
        var run = await HostProgram.RunAsync(["fit", "--trials", folder.Write("t.csv", trials), .. more]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(said, run.Error);
    }

    [Theory]
    [InlineData("--nodes 2", "from 3 to 61")]
    [InlineData("--ability-sd 1", "--scales fixed")]
    [InlineData("--scales fixed --residual-sd 0", "from 0.01 to 10")]
    [InlineData("--covariates spin", "“spin”")]
    [InlineData("--covariates dose --priors flat", "each level stands for itself")]
    [InlineData("--levels none.csv", "none.csv")]
    public async Task Fit_OfOptionsThatCannotBe_SaysWhatIsPossible(string options, string said)
    {
        var run = await HostProgram.RunAsync(["fit", "--trials", StudyRun.Data("class.csv"), .. options.Split(' ')]);
        Assert.Equal(2, run.ExitCode);
        Assert.Contains(said, run.Error);
        Assert.DoesNotContain("went wrong", run.Error);
    }

    [Fact]
    public async Task Fit_OfAMistakeAsJson_SaysEachAsADetail()
    {
        using var folder = new TempFolder();
        var run = await HostProgram.RunInAsync(null, "es_ES.UTF-8", "fit", "--trials", folder.Write("t.csv", "pupil,level,success\nAna,a,quizás\n"), "--json");
        Assert.Equal(2, run.ExitCode);
        var error = JsonNode.Parse(run.Error)!;
        Assert.StartsWith("No se calcula nada: 1 cosa", error["error"]!.GetValue<string>());
        Assert.Equal("t.csv, línea 2, columna «success»: «quizás» no es posible aquí. Es posible: 1 o 0 (también sí o no, verdadero o falso).", error["details"]![0]!.GetValue<string>());
    }
}
