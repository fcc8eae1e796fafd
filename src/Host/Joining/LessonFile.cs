using Slantwise.Records.Floor.Contracts;

namespace Slantwise.Host.Joining;

/// <summary>A lesson for a tablet that finds no network: what joining and the bundle would have given it.</summary>
/// <param name="Token">What it shows once it finds the program after all.</param>
/// <param name="Device">The device the tablet becomes.</param>
/// <param name="Bundle">The lesson.</param>
internal sealed record LessonFile(string Token, LessonFileDevice Device, LessonBundle Bundle)
{
    /// <summary>The making of files this one follows; a tablet refuses another.</summary>
    public string Format => "slantwise-bundle/1";
}
