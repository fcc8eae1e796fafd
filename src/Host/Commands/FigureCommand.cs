using System.CommandLine;
using System.Globalization;
using System.Text;
using Slantwise.Engines.Drawing;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Host.Answers;
using Slantwise.Host.Postures;
using Slantwise.Host.Words;
using Slantwise.Paper;
using Slantwise.Records.Postures;
using Slantwise.Records.Postures.Figures;

namespace Slantwise.Host.Commands;

/// <summary><c>figure</c>: the drawing of a posture's file, or of one of the library, as SVG or PDF.</summary>
internal static class FigureCommand
{
    private const double MostMm = 1000;

    public static Command Of(GlobalOptions options)
    {
        var file = new Argument<string>("FILE") { Description = HostWords.Say("ArgumentPosture") };
        var output = new Option<string>("--output", "-o") { Description = HostWords.Say("OptionFigureOutput"), HelpName = "FILE", Required = true };
        var view = new Option<string>("--view") { Description = HostWords.Say("OptionView"), DefaultValueFactory = _ => "clearest" };
        view.AcceptOnlyFromAmong("clearest", "side", "front", "three-quarter");
        var size = new Option<double>("--size") { Description = HostWords.Say("OptionFigureSize"), HelpName = "MM", DefaultValueFactory = _ => 60 };
        var shows = new Option<bool>("--balance") { Description = HostWords.Say("OptionBalance") };
        var command = new Command("figure", HostWords.Say("FigureHelp")) { file, output, view, size, shows };
        command.SetAction(async (parsed, cancel) =>
        {
            var sizeMm = parsed.GetValue(size);
            if (!(sizeMm is >= PostureFigure.SmallestMm and <= MostMm)) throw Refusal.Of("FigureSizeRange", sizeMm, PostureFigure.SmallestMm, MostMm);
            var target = Path.GetFullPath(parsed.GetRequiredValue(output));
            if (Directory.Exists(target)) throw Refusal.Of("TargetIsAFolder", target);

            var posture = await PostureFile.ReadAsync(parsed.GetRequiredValue(file), PostureProblemWords.UsualCm, cancel);
            var settled = posture.Settle();
            var isShown = parsed.GetValue(shows);
            var drawn = new FigureOptions(ViewOf(parsed.GetValue(view)!, settled), sizeMm, sizeMm) { ShowsBase = isShown, ShowsGravity = isShown, ShowsContacts = isShown };
            var description = PostureDescription.Of(settled, CultureInfo.CurrentUICulture);
            var bytes = Bytes(PostureFigure.Of(settled, drawn, description).Scene, posture.Key, target);
            await File.WriteAllBytesAsync(target, bytes, cancel);
            Answer.Say(parsed, options, HostWords.Say("FigureDrawn", target, description), new { file = target, key = posture.Key, description });
            return 0;
        });
        return command;
    }

    private static FigureView ViewOf(string name, SettledPosture settled) => name switch
    {
        "side" => FigureView.Side,
        "front" => FigureView.Front,
        "three-quarter" => FigureView.ThreeQuarter,
        _ => PostureFigure.ClearestView(settled),
    };

    // The same scene either way.
    private static byte[] Bytes(Scene scene, string title, string target)
    {
        switch (Path.GetExtension(target).ToUpperInvariant())
        {
            case ".SVG":
                return Encoding.UTF8.GetBytes(SvgWriter.Write(scene) + "\n");
            case ".PDF":
                using (var pdf = new MemoryStream())
                {
                    PdfWriter.Write([scene], title, CultureInfo.CurrentUICulture, pdf);
                    return pdf.ToArray();
                }
            default:
                throw Refusal.Of("FigureKind", target);
        }
    }
}
