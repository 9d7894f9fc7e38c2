using System.Globalization;
using System.Net;
using System.Text.RegularExpressions;
using ClimateLens.EndToEnd.Tests.Program;
using ClimateLens.TestKit;
using DuckDB.NET.Data;

namespace ClimateLens.EndToEnd.Tests;

/// <summary>The queries on a page, run as they stand there with DuckDB in the folder of the nursery file.</summary>
public sealed partial class StoreQueryTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();
    private readonly string _nursery;
    private readonly string _page;

    public StoreQueryTests()
    {
        _nursery = _folder.CopyFolder(Repository.PathOf("sample-logs"), "sample-logs");
        Assert.Equal(0, ClimateLensProgram.Run("review", Path.Combine(_nursery, "nursery.toml"), "--house", "1", "--week", "2025-W42", "--quiet").ExitCode);
        _page = _folder.PathOf("reports/site/house-1/2025-W42");
    }

    [Fact]
    public void EveryQueryOnThePage_Runs_AndTheOneOfTheAirGivesTheHoursBesideIt()
    {
        string html = File.ReadAllText(Path.Combine(_page, "index.html"));
        string[] queries = [.. Queries().Matches(html).Select(m => WebUtility.HtmlDecode(m.Groups[1].Value)).Distinct(StringComparer.Ordinal)];
        Assert.True(queries.Length >= 5);
        Assert.All(queries, q => Assert.NotEmpty(Rows(q)));

        // No value of this week failed a check, so that plain hourly means of the store are those of the page.
        object[][] air = Rows(WebUtility.HtmlDecode(Queries().Match(html[html.IndexOf("<section id=\"air\"", StringComparison.Ordinal)..]).Groups[1].Value));
        string[][] hours = [.. File.ReadLines(Path.Combine(_page, "hours.csv")).Skip(1).Select(l => l.Split(','))];
        Assert.Equal(hours.Length, air.Length);
        for (int i = 0; i < hours.Length; i++)
        {
            Assert.Equal(DateTimeOffset.Parse(hours[i][0], CultureInfo.InvariantCulture).UtcDateTime, ((DateTime)air[i][0]).ToUniversalTime());
            Assert.Equal(double.Parse(hours[i][1], CultureInfo.InvariantCulture), (double)air[i][1], 0.051); // the page's stamps name the instant, and its grid's edges are half a step off
        }
    }

    [Fact]
    public void QueriesOverAllHouses_ShippedInTheDocs_Run()
    {
        string docs = File.ReadAllText(Repository.PathOf("docs/queries.md"));
        string[] queries = [.. Fenced().Matches(docs).Select(m => m.Groups[1].Value)];
        Assert.True(queries.Length >= 3);
        Assert.All(queries, q => Assert.NotEmpty(Rows(q.Replace("site/", "../reports/site/", StringComparison.Ordinal))));
    }

    public void Dispose() => _folder.Dispose();

    private object[][] Rows(string sql)
    {
        using DuckDBConnection connection = new("DataSource=:memory:");
        connection.Open();
        using DuckDBCommand command = connection.CreateCommand();
        command.CommandText = $"set file_search_path = '{_nursery}'; set TimeZone = 'UTC';";
        command.ExecuteNonQuery();
        command.CommandText = sql;
        using DuckDBDataReader reader = (DuckDBDataReader)command.ExecuteReader();
        List<object[]> rows = [];
        while (reader.Read())
        {
            object[] row = new object[reader.FieldCount];
            reader.GetValues(row);
            rows.Add(row);
        }

        return [.. rows];
    }

    [GeneratedRegex("DuckDB[^<]*<pre[^>]*><code>(.*?)</code>", RegexOptions.Singleline)]
    private static partial Regex Queries();

    [GeneratedRegex("```sql\\n(.*?)```", RegexOptions.Singleline)]
    private static partial Regex Fenced();
}
