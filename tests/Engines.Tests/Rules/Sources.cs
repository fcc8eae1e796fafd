using Microsoft.CodeAnalysis.CSharp;
using Microsoft.CodeAnalysis.CSharp.Syntax;

namespace Slantwise.Engines.Tests.Rules;

/// <summary>The repository as the rules read it: text and syntax, nothing built.</summary>
internal static class Sources
{
    public static string Root { get; } = FindRoot();

    /// <summary>Hand-written C# below a folder of the repository, with its path from the root.</summary>
    public static IEnumerable<(string Path, string Text)> Code(params string[] folders) => Files(folders, "*.cs")
        .Where(f => !f.Path.Contains("/Migrations/") && !f.Path.EndsWith(".Designer.cs"));

    public static IEnumerable<(string Path, string Text)> Files(string[] folders, string pattern) =>
        from folder in folders
        let full = Path.Combine(Root, folder)
        where Directory.Exists(full)
        from file in Directory.EnumerateFiles(full, pattern, SearchOption.AllDirectories)
        let path = Path.GetRelativePath(Root, file).Replace('\\', '/')
        where !path.Split('/').Any(part => part is "bin" or "obj" or "node_modules" or "artifacts")
        orderby path
        select (path, File.ReadAllText(file));

    public static CompilationUnitSyntax Syntax(string text) => CSharpSyntaxTree.ParseText(text).GetCompilationUnitRoot();

    public static void None(IEnumerable<string> offences, string rule)
    {
        var found = offences.ToList();
        Assert.True(found.Count == 0, $"{rule}\n  {string.Join("\n  ", found)}");
    }

    private static string FindRoot()
    {
        for (var folder = new DirectoryInfo(AppContext.BaseDirectory); folder is not null; folder = folder.Parent)
            if (File.Exists(Path.Combine(folder.FullName, "Slantwise.slnx"))) return folder.FullName;
        throw new InvalidOperationException("The rules read the repository: run them from a checkout.");
    }
}
