using System.Globalization;
using System.Text.RegularExpressions;
using Slantwise.Desk.Pages.Balance;
using Slantwise.Desk.Words;
using Slantwise.Engines.Mechanics;
using Slantwise.Engines.Mechanics.Postures;
using Slantwise.Records.Postures;
using Slantwise.Records.Postures.Figures;

namespace Slantwise.Surface.Tests.Desk.Balance;

/// <summary>A page that asks for words that are not there fails only when somebody opens it: so the sources are read here.</summary>
public sealed partial class StudioWordsTests
{
    private static readonly CultureInfo English = CultureInfo.GetCultureInfo("en"), Spanish = CultureInfo.GetCultureInfo("es");

    [Fact]
    public void Say_EveryKeyNamedInTheStudio_HasWords()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(folder.FullName, "Slantwise.slnx"))) folder = folder.Parent!;
        var keys = (
            from file in Directory.EnumerateFiles(Path.Combine(folder.FullName, "src/Desk/Pages/Balance"))
            where Path.GetFileName(file).StartsWith("Studio") || Path.GetFileName(file).Contains("Compar")
            from Match call in Call().Matches(File.ReadAllText(file))
            select call.Groups[1].Value).Distinct().ToList();
        Assert.True(keys.Count > 60, $"Only {keys.Count} keys were found: the pages are no longer read.");
        Assert.All(keys, key => Assert.True(StudioWords.Text(key, English).Length > 0));
    }

    [Fact]
    public void Text_EveryKeyMadeOfAKind_HasWordsInBothLanguages()
    {
        string[] keys =
        [
            .. Enum.GetNames<PostureGroup>().Select(n => "Group" + n), .. Enum.GetNames<FigureView>().Select(n => "View" + n), .. Enum.GetNames<Sex>().Select(n => "Table" + n),
            .. Enum.GetNames<BodyDirection>().Select(n => "PlanTop" + n), .. Enum.GetNames<Joint>().Select(n => "Joint" + n), .. StudioLimb.All.Select(l => "Limb" + l.Key),
        ];
        foreach (var key in keys)
            foreach (var language in new[] { English, Spanish }) Assert.NotEmpty(StudioWords.Text(key, language));
    }

    [Theory]
    [InlineData(Joint.KneeFlexion, Side.Left, JointStopKind.Straight, "It goes no further: the left knee is straight.", "No llega más lejos: la rodilla izquierda está estirada.")]
    [InlineData(Joint.ElbowFlexion, Side.Right, JointStopKind.Most, "It goes no further: the right elbow is fully bent.", "No llega más lejos: el codo derecho está doblado del todo.")]
    [InlineData(Joint.SpineLean, Side.Middle, JointStopKind.Least, "It goes no further: the back leans right no further.", "No llega más lejos: la espalda no se inclina más a la derecha.")]
    public void Of_AStop_IsASentenceInEitherLanguage(Joint joint, Side side, JointStopKind kind, string english, string spanish)
    {
        Assert.Equal(english, StudioStops.Of([new(joint, side, kind)], English));
        Assert.Equal(spanish, StudioStops.Of([new(joint, side, kind)], Spanish));
    }

    [Fact]
    public void Of_EveryStopOfEveryJoint_HasAllItsGapsFilled()
    {
        foreach (var joint in Enum.GetValues<Joint>())
            foreach (var side in Pose.IsPaired(joint) ? new[] { Side.Left, Side.Right } : [Side.Middle])
                foreach (var kind in Enum.GetValues<JointStopKind>())
                    foreach (var language in new[] { English, Spanish })
                        Assert.DoesNotContain("  ", StudioStops.Of([new(joint, side, kind)], language));
    }

    [GeneratedRegex(@"\b(?:S\.Say|StudioWords\.Say|Text)\(\s*""([A-Z][A-Za-z]+)""\s*[,)]")]
    private static partial Regex Call();
}
