using System.Text.RegularExpressions;
using System.Xml.Linq;
using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using Slantwise.Engines.Drawing;

namespace Slantwise.Engines.Tests.Rules;

public sealed partial class RoomsTests
{
    [Fact]
    public void Projects_AgainstTheRoomsTable_ReferenceOnlyWhatItAllows()
    {
        var table = Table();
        var projects = Directory.EnumerateFiles(Path.Combine(Sources.Root, "src"), "*.csproj", SearchOption.AllDirectories)
            .ToDictionary(f => Path.GetFileNameWithoutExtension(f), References);

        Assert.Equal(table.Keys.Order(), projects.Keys.Order());
        foreach (var (room, references) in projects)
            Sources.None(references.Except(table[room]), $"{room} references rooms that docs/rooms.md does not allow:");
    }

    [Fact]
    public void Engines_EachFolder_NamesNoOtherEngine()
    {
        var engines = Directory.EnumerateDirectories(Path.Combine(Sources.Root, "src/Engines"))
            .Select(Path.GetFileName).Where(n => n is not ("bin" or "obj")).ToList();
        Sources.None(
            from file in Sources.Code("src/Engines")
            let own = file.Path.Split('/')[2]
            from other in engines
            where other != own && Regex.IsMatch(file.Text, $@"Slantwise\.Engines\.{other}\b")
            select $"{file.Path} names {other}",
            "An engine names no other engine:");
    }

    [Fact]
    public void Engines_AsBuilt_DependOnNothingButTheBaseLibraryAndMathNet()
    {
        // What the sources say is one thing; this reads what the compiler made of them.
        var built = new ArchLoader().LoadAssemblies(typeof(Scene).Assembly).Build();
        Sources.None(
            from type in built.Types
            from target in type.Dependencies.Select(d => d.Target).Where(t => t is not GenericParameter).Distinct()
            let name = target.FullName
            where !name.StartsWith("Slantwise.Engines.") && !name.StartsWith("System.") && !name.StartsWith("MathNet.Numerics.")
                && !name.StartsWith("Microsoft.CodeAnalysis.") && name.Contains('.') && !name.StartsWith('<')
            select $"{type.FullName} uses {name}",
            "Engines use the base library and MathNet.Numerics:");
        Assert.True(built.Types.Count() > 50, "The engines were loaded.");
    }

    private static Dictionary<string, string[]> Table() => File.ReadLines(Path.Combine(Sources.Root, "docs/rooms.md"))
        .Select(line => TableRow().Match(line))
        .Where(m => m.Success && m.Groups["room"].Value != "room" && !m.Groups["room"].Value.StartsWith('-'))
        .ToDictionary(
            m => m.Groups["room"].Value.Trim(),
            m => m.Groups["may"].Value.Split(',', StringSplitOptions.TrimEntries).Where(r => r != "—").ToArray());

    private static string[] References(string project) => XDocument.Load(project).Descendants("ProjectReference")
        .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/'))).ToArray();

    [GeneratedRegex(@"^\| (?<room>[^|]+) \| (?<may>[^|]+) \|")]
    private static partial Regex TableRow();
}
