using System.Globalization;

namespace Slantwise.Bench.Floor.Load;

/// <summary>What is measured, from the command line.</summary>
internal sealed record LoadOptions
{
    /// <summary>The published program.</summary>
    public required string Program { get; init; }

    public int LessonCount { get; init; } = 1000;

    public int PupilCount { get; init; } = 30;

    public int TabletCount { get; init; } = 8;

    /// <summary>How often a set of three minutes is done in three minutes: 2 is twice the usual rate.</summary>
    public double RateFactor { get; init; } = 1;

    public double WarmS { get; init; } = 30;

    public double MeasuredS { get; init; } = 180;

    /// <summary>Lessons with a teacher's phone that listens.</summary>
    public int TeacherCount { get; init; } = 100;

    /// <summary>Tablets of each lesson that listen, as pages do.</summary>
    public int ListenerCount { get; init; } = 8;

    /// <summary>A PostgreSQL server with a database to make; none for SQLite.</summary>
    public string? Postgres { get; init; }

    /// <summary>Where the records go; an empty folder.</summary>
    public required string Folder { get; init; }

    public static LoadOptions Of(string[] arguments)
    {
        if (arguments is not [var program, var folder, .. var rest] || rest.Length % 2 != 0) throw new ArgumentException("Load PROGRAM.dll FOLDER [--lessons N] …: see bench/README.md.");
        var options = new LoadOptions { Program = Path.GetFullPath(program), Folder = Path.GetFullPath(folder) };
        foreach (var pair in rest.Chunk(2))
        {
            double Number() => double.Parse(pair[1], CultureInfo.InvariantCulture);
            options = pair[0] switch
            {
                "--lessons" => options with { LessonCount = (int)Number() },
                "--rate" => options with { RateFactor = Number() },
                "--warm" => options with { WarmS = Number() },
                "--seconds" => options with { MeasuredS = Number() },
                "--teachers" => options with { TeacherCount = (int)Number() },
                "--listeners" => options with { ListenerCount = (int)Number() },
                "--postgres" => options with { Postgres = pair[1] },
                _ => throw new ArgumentException($"No option {pair[0]}."),
            };
        }
        return options;
    }
}
