using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Slantwise.Engines.Tests.Rules;

public sealed class FilesTests
{
    private static readonly string[] Forbidden = ["Core", "Common", "Shared", "Utils", "Helpers", "Base", "Manager"];

    [Fact]
    public void Files_OfTheSource_StayShort()
    {
        var lengths = Sources.Code("src").Select(f => (f.Path, Lines: f.Text.Count(c => c == '\n'))).OrderBy(f => f.Lines).ToList();
        Sources.None(lengths.Where(f => f.Lines > 400).Select(f => $"{f.Path}: {f.Lines} lines"), "No file is over 400 lines:");
        Assert.True(lengths[lengths.Count / 2].Lines <= 60, $"The median file has {lengths[lengths.Count / 2].Lines} lines; at most about 60.");
        var longFiles = lengths.Where(f => f.Lines > 200).ToList();
        Assert.True(longFiles.Count <= lengths.Count / 10,
            $"{longFiles.Count} of {lengths.Count} files are over 200 lines; at most a tenth: {string.Join(", ", longFiles)}");
    }

    [Fact]
    public void Files_OfTheTests_StayUnder600Lines() => Sources.None(
        Sources.Code("tests").Where(f => f.Text.Count(c => c == '\n') > 600).Select(f => f.Path), "No test file is over 600 lines:");

    [Fact]
    public void Files_WithPublicTypes_HoldOneOfTheSameName() => Sources.None(
        from file in Sources.Code("src")
        let types = Sources.Syntax(file.Text).DescendantNodes().OfType<BaseTypeDeclarationSyntax>()
            .Where(t => t.Parent is not TypeDeclarationSyntax && t.Modifiers.Any(m => m.Text == "public"))
            .Select(t => t.Identifier.Text).Distinct().ToList()
        where types.Count > 1 || (types.Count == 1 && types[0] != Path.GetFileName(file.Path).Split('.')[0])
        select $"{file.Path}: {string.Join(", ", types)}",
        "One public type a file, of the file's name:");

    [Fact]
    public void Names_OfTypesAndFolders_AreNotDumpingGrounds()
    {
        Sources.None(
            from file in Sources.Code("src", "tests", "bench")
            from part in Path.GetDirectoryName(file.Path)!.Split('/')
            where Forbidden.Contains(part)
            select file.Path,
            $"No folder is called {string.Join(", ", Forbidden)}:");
        Sources.None(
            from file in Sources.Code("src", "tests", "bench")
            from type in Sources.Syntax(file.Text).DescendantNodes().OfType<BaseTypeDeclarationSyntax>()
            let name = type.Identifier.Text
            where Forbidden.Contains(name) || name.EndsWith("Manager") || name.EndsWith("Helper") || name.EndsWith("Utils") || name.EndsWith("Dto")
            select $"{file.Path}: {name}",
            "No type is named for nothing in particular:");
    }
}
