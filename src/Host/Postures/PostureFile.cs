using System.Globalization;
using System.Text;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Host.Answers;
using Slantwise.Records.Postures;

namespace Slantwise.Host.Postures;

/// <summary>A posture that a command is given: a file, or the key of one that comes with the program.</summary>
internal static class PostureFile
{
    public static async Task<Posture> ReadAsync(string fileOrKey, double statureCm, CancellationToken cancel)
    {
        if (!File.Exists(fileOrKey) && PostureLibrary.Find(fileOrKey) is { } known) return known;
        if (!File.Exists(fileOrKey) && !Directory.Exists(fileOrKey)) throw Refusal.Of("NoPosture", fileOrKey);
        var text = Encoding.UTF8.GetString(await TextFile.ReadAsync(fileOrKey, cancel));
        var reading = PostureText.Read(text.TrimStart('\uFEFF'));
        if (reading.Posture is { } posture) return posture;
        var said = reading.Problems.Select(p => PostureProblemWords.Of(p, CultureInfo.CurrentUICulture, statureCm)).ToList();
        if (said.Count == 1) throw Refusal.Of("PostureRefused", fileOrKey, said[0]);
        throw new Refusal(Words.HostWords.Say("PostureRefusedMany", fileOrKey, said.Count)) { Details = said };
    }
}
