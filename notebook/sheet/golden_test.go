package sheet

import (
	"bytes"
	"encoding/xml"
	"errors"
	"flag"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"ohmcall/notebook/record"
)

var update = flag.Bool("update", false, "write the golden page anew")

func mustRender(t testing.TB, r *record.Record, remarks map[string]string) []byte {
	t.Helper()
	out, err := Render(r, remarks, "")
	if err != nil {
		t.Fatal(err)
	}
	return out
}

func TestGolden(t *testing.T) {
	path := filepath.Join("testdata", "call.html")
	got := mustRender(t, demo(), demoRemarks)
	if *update {
		if err := os.WriteFile(path, got, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(got, want) {
		t.Errorf("the page differs from %s; look at it in a browser, then run the test with -update", path)
	}
	for range 20 {
		if !bytes.Equal(got, mustRender(t, demo(), demoRemarks)) {
			t.Fatal("the same record gives different bytes")
		}
	}
}

// TestSize holds the page of a usual call to what a mail takes with ease.
func TestSize(t *testing.T) {
	const limit = 64 << 10
	if n := len(mustRender(t, demo(), demoRemarks)); n > limit {
		t.Errorf("the page has %d bytes, want %d at most", n, limit)
	}
}

// wellFormed reads a page with a strict XML reader: the page is written so
// that every element is closed and every attribute quoted.
func wellFormed(doc []byte) error {
	d := xml.NewDecoder(bytes.NewReader(doc))
	for {
		if _, err := d.Token(); errors.Is(err, io.EOF) {
			return nil
		} else if err != nil {
			return err
		}
	}
}

func TestWellFormed(t *testing.T) {
	empty := &record.Record{}
	one := &record.Record{Machines: []record.Machine{{Name: "m"}}, Curves: []record.Curve{{Place: "p", Unit: "C"}}}
	for name, r := range map[string]*record.Record{"demo": demo(), "empty": empty, "nearly empty": one} {
		if err := wellFormed(mustRender(t, r, demoRemarks)); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	if wellFormed([]byte("<p><b></p>")) == nil {
		t.Error("the reader takes a page that is not well-formed")
	}
}

// TestPlaceToSign: on paper the page ends with a place for names, dates and
// signatures; on the screen it is not there.
func TestPlaceToSign(t *testing.T) {
	got := string(mustRender(t, demo(), demoRemarks))
	at := strings.Index(got, `<section class="sign"`)
	if at < strings.Index(got, `id="log"`) || !strings.Contains(got[at:], demo().Header.Technician) {
		t.Fatal("the place to sign does not end the page, or lacks who did the work")
	}
	if n := strings.Count(got[at:], "Signature"); n != 2 {
		t.Errorf("%d places to sign", n)
	}
	css := got[:strings.Index(got, "</style>")]
	paper := strings.Index(css, "@media print")
	if !strings.Contains(css[:paper], ".sign { display: none; }") || !strings.Contains(css[paper:], ".sign { display: block;") {
		t.Error("the place to sign is not for paper alone")
	}
}

// On paper the words of the causes stay whole: the table is narrow, and
// "none" must not read "non e". Whatever people wrote may break anywhere.
func TestCausesStayWholeOnPaper(t *testing.T) {
	got := string(mustRender(t, demo(), demoRemarks))
	paper := got[strings.Index(got, "@media print"):strings.Index(got, "</style>")]
	any, whole := strings.Index(paper, "table { font-size: 7.5pt; overflow-wrap: anywhere; }"), strings.Index(paper, "#causes td { overflow-wrap: break-word; }")
	if any < 0 || whole < any {
		t.Error("the causes break within words")
	}
	// A short list is not parted over two columns, and where a longer one goes on
	// its head says what it is.
	if !strings.Contains(got, `<section id="causes" class="keep">`) || !strings.Contains(paper, ".keep { break-inside: avoid; }") || !strings.Contains(got, `<th scope="col">Cause considered</th>`) {
		t.Error("the causes may go on beside other tables without a word of what they are")
	}
	if cell := got[strings.Index(got, `<section id="causes"`):]; !strings.Contains(cell[:strings.Index(cell, "</section>")], "<td>none</td>") {
		t.Error("the demo's causes have none that nothing speaks for: this holds nothing")
	}
}

// A list of causes that is as long as a column may go on in the next.
func TestLongCausesMayBreak(t *testing.T) {
	r := demo()
	for range 20 {
		r.Causes = append(r.Causes, record.Cause{Name: "winding open", State: "open"})
	}
	if strings.Contains(string(mustRender(t, r, nil)), `<section id="causes" class="keep">`) {
		t.Error("a list longer than a column is kept whole")
	}
}
