namespace Slantwise.Records.Simulation;

/// <summary>Given names for invented pupils, from many places, as a school's are.</summary>
internal static class DemoNames
{
    private static readonly string[] Given =
    [
        "Aaliyah", "Abena", "Ada", "Ahmed", "Aisha", "Alba", "Aleksander", "Amara", "Anand", "Anya", "Arthur", "Ayo", "Bilal", "Bronwen",
        "Callum", "Carmen", "Chidi", "Chloe", "Dafydd", "Darius", "Dilara", "Ebony", "Eilidh", "Elif", "Emeka", "Esme", "Farah", "Felix",
        "Freya", "Gabriel", "Grace", "Hamza", "Hana", "Harriet", "Ibrahim", "Imani", "Ines", "Isaac", "Jamal", "Jasmine", "Jaya", "Kacper",
        "Kaito", "Keira", "Kofi", "Lakshmi", "Leila", "Lucas", "Mai", "Malachi", "Marisol", "Mateo", "Mei", "Nadia", "Niamh", "Noah",
        "Olivia", "Oskar", "Priya", "Quynh", "Rafael", "Rohan", "Rosa", "Samira", "Sienna", "Tariq", "Theo", "Uma", "Vera", "Wanjiru",
        "Xavier", "Yasmin", "Yusuf", "Zofia",
    ];

    private static readonly string[] Initials = ["B", "D", "K", "M", "P", "S", "T", "W"];

    /// <summary>Names no two of which are alike, by alphabet; one given name occurs twice, with initials, as in any class.</summary>
    /// <param name="count">From 3 up to 75.</param>
    /// <param name="draws">What they are drawn with.</param>
    public static IReadOnlyList<string> For(int count, Draws draws)
    {
        var given = draws.Shuffled(Given).Take(count - 1).ToList();
        var initials = draws.Shuffled(Initials);
        var twice = given[0];
        return given.Skip(1)
            .Append($"{twice} {initials[0]}")
            .Append($"{twice} {initials[1]}")
            .Order(StringComparer.Ordinal)
            .ToList();
    }
}
