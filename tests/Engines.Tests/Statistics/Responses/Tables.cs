using System.Globalization;
using Slantwise.Engines.Statistics.Responses;
using Slantwise.Engines.Tests.Rules;

namespace Slantwise.Engines.Tests.Statistics.Responses;

/// <summary>The tables beside these tests; data/README.md says where each comes from.</summary>
internal static class Tables
{
    /// <summary>Rows of a table, comments and head left out.</summary>
    public static List<string[]> Rows(string name) => [.. File.ReadLines(Path.Combine(Sources.Root, "tests/Engines.Tests/Statistics/Responses/data", name))
        .Where(l => l.Length > 0 && l[0] != '#').Skip(1).Select(l => l.Replace("\"", "").Split(','))];

    public static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    /// <summary>Values by the name in the first column.</summary>
    public static Dictionary<string, double[]> Named(string name) =>
        Rows(name).ToDictionary(r => r[0], r => r.Skip(1).Select(v => double.TryParse(v, CultureInfo.InvariantCulture, out var x) ? x : double.NaN).ToArray());

    /// <summary>1000 people who answered five questions, as pupils and levels. Source: [BockLieberman1970], Law School Admission Test, sections 6 and 7.</summary>
    public static ResponseData Lsat(int section)
    {
        var trials = new List<ResponseTrial>();
        var pupils = 0;
        foreach (var row in Rows("lsat6_lsat7_patterns.csv"))
        {
            for (var n = int.Parse(row[section == 6 ? 6 : 7]); n > 0; n--, pupils++)
                for (var j = 0; j < 5; j++) trials.Add(ResponseTrial.Single(pupils, j, 0, row[1 + j] == "1"));
        }
        return new(Pupils(pupils), Levels(5), trials);
    }

    /// <summary>A simulated class of 30 with 15 trials each: two tasks, holds of 2 to 20 s, six lessons.</summary>
    public static ResponseData SimulatedClass()
    {
        var rows = Rows("sim_class_30x15.csv").Select(r => r.Select(int.Parse).ToArray()).ToList();
        var levels = Enumerable.Range(1, 12).Select(j =>
        {
            // Levels that nobody chose are not in the file; they are the missing doses of 2, 3, 5, 8, 12, 20 s of each task.
            double[] doses = [2, 3, 5, 8, 12, 20];
            return new ResponseLevel((j - 1) / 6, LevelDose.Hold(doses[(j - 1) % 6]));
        }).ToList();
        Assert.All(rows, r => Assert.Equal(LevelDose.Hold(r[4]), levels[r[2] - 1].Dose));
        return new(Pupils(30), levels, [.. rows.Select(r => ResponseTrial.Single(r[0] - 1, r[2] - 1, r[1], r[5] == 1))]);
    }

    public static ResponsePupil[] Pupils(int count) => [.. Enumerable.Range(0, count).Select(_ => new ResponsePupil())];

    public static ResponseLevel[] Levels(int count) => [.. Enumerable.Range(0, count).Select(j => new ResponseLevel(j))];

    /// <summary>The assumptions under which the reference values for the simulated class were made: no drift, no ties within a task, wide normal priors.</summary>
    public static ResponseOptions ClassOptions(double? abilitySd = null, double? residualSd = null) => new()
    {
        AbilitySdLogits = abilitySd,
        ResidualSdLogits = residualSd,
        DriftSdLogits = 0,
        Priors = new() { Middle = new(0, 3), DoseSlope = new(0, 3), OwnSlopeSdLogits = 0, Growth = new(0, 1), TaskShareFraction = 0 },
    };
}
