//! A small server of static files on 127.0.0.1, for trying the pages and for the browser tests.
//!
//! One request a connection, nothing kept by the browser behind our back, nothing outside the folder.

use std::collections::HashMap;
use std::io::{BufRead, BufReader, Read, Write};
use std::net::{Shutdown, SocketAddr, TcpListener, TcpStream};
use std::path::{Path, PathBuf};
use std::sync::atomic::{AtomicBool, AtomicU64, Ordering};
use std::sync::{Arc, Mutex, PoisonError};
use std::time::Duration;

use crate::Outcome;

/// A running server; it stops when dropped.
pub struct Server {
    address: SocketAddr,
    prefix: String,
    shared: Arc<Shared>,
}

struct Shared {
    root: PathBuf,
    prefix: String,
    stopping: AtomicBool,
    next: AtomicU64,
    open: Mutex<HashMap<u64, TcpStream>>,
}

/// What a request is answered with.
#[derive(Debug, PartialEq)]
struct Answer {
    status: &'static str,
    kind: &'static str,
    body: Vec<u8>,
}

impl Server {
    /// Serves a folder at a port, or at any free one when `port` is 0.
    ///
    /// # Errors
    /// When the folder is missing or the port is taken.
    pub fn start(root: &Path, port: u16) -> Outcome<Self> {
        Self::start_under(root, port, "/")
    }

    /// Serves a folder under a sub-path such as `/workshop/reckoner/`.
    ///
    /// # Errors
    /// When the folder is missing or the port is taken.
    pub fn start_under(root: &Path, port: u16, prefix: &str) -> Outcome<Self> {
        let root = root
            .canonicalize()
            .map_err(|error| format!("{}: {error}", root.display()))?;
        let listener = TcpListener::bind(("127.0.0.1", port))
            .map_err(|error| format!("port {port} on 127.0.0.1: {error}"))?;
        let address = listener.local_addr().map_err(|error| error.to_string())?;
        let shared = Arc::new(Shared {
            root,
            prefix: prefix.to_owned(),
            stopping: AtomicBool::new(false),
            next: AtomicU64::new(0),
            open: Mutex::default(),
        });
        let accepting = Arc::clone(&shared);
        std::thread::spawn(move || accepting.accept(&listener));
        Ok(Self {
            address,
            prefix: prefix.to_owned(),
            shared,
        })
    }

    /// The address to open.
    #[must_use]
    pub fn url(&self) -> String {
        format!("http://{}{}", self.address, self.prefix)
    }

    /// The port in use.
    #[must_use]
    pub fn port(&self) -> u16 {
        self.address.port()
    }

    /// Stops listening and closes every connection, also those a browser holds open without asking for anything.
    pub fn stop(&self) {
        if self.shared.stopping.swap(true, Ordering::SeqCst) {
            return;
        }
        // Wakes the thread that waits for a connection, so that the port is given back.
        let _ = TcpStream::connect_timeout(&self.address, Duration::from_secs(1));
        let mut open = self.shared.open();
        for (_, stream) in open.drain() {
            let _ = stream.shutdown(Shutdown::Both);
        }
    }
}

impl Drop for Server {
    fn drop(&mut self) {
        self.stop();
    }
}

impl Shared {
    fn open(&self) -> std::sync::MutexGuard<'_, HashMap<u64, TcpStream>> {
        self.open.lock().unwrap_or_else(PoisonError::into_inner)
    }

    fn accept(self: &Arc<Self>, listener: &TcpListener) {
        for stream in listener.incoming() {
            if self.stopping.load(Ordering::SeqCst) {
                return;
            }
            let Ok(stream) = stream else { continue };
            let number = self.next.fetch_add(1, Ordering::Relaxed);
            if let Ok(handle) = stream.try_clone() {
                self.open().insert(number, handle);
            }
            let shared = Arc::clone(self);
            std::thread::spawn(move || {
                let _ = shared.converse(stream);
                if let Some(handle) = shared.open().remove(&number) {
                    let _ = handle.shutdown(Shutdown::Both);
                }
            });
        }
    }

    fn converse(&self, mut stream: TcpStream) -> std::io::Result<()> {
        stream.set_read_timeout(Some(Duration::from_secs(30)))?;
        let mut reader = BufReader::new(stream.try_clone()?).take(16 * 1024);
        let mut request = String::new();
        reader.read_line(&mut request)?;
        let mut header = String::new();
        while reader.read_line(&mut header)? > 2 {
            header.clear();
        }
        let mut words = request.split_whitespace();
        let (method, target) = (words.next().unwrap_or(""), words.next().unwrap_or(""));
        let answer = self.answer(method, target);
        write!(
            stream,
            "HTTP/1.1 {}\r\nContent-Type: {}\r\nContent-Length: {}\r\nCache-Control: no-store\r\n\
             X-Content-Type-Options: nosniff\r\nConnection: close\r\n\r\n",
            answer.status,
            answer.kind,
            answer.body.len()
        )?;
        if method != "HEAD" {
            stream.write_all(&answer.body)?;
        }
        stream.flush()
    }

    fn answer(&self, method: &str, target: &str) -> Answer {
        if method != "GET" && method != "HEAD" {
            return Answer::plain("405 Method Not Allowed", "only GET and HEAD");
        }
        let path = target.split(['?', '#']).next().unwrap_or("");
        let Some(inside) = path.strip_prefix(self.prefix.as_str()) else {
            return Answer::plain("404 Not Found", "not here");
        };
        let Some(mut file) = place(&self.root, inside) else {
            return Answer::plain("400 Bad Request", "not a path in this folder");
        };
        if file.is_dir() {
            file.push("index.html");
        }
        // A link inside the folder may point out of it; the real place decides.
        match file.canonicalize() {
            Ok(real) if real.starts_with(&self.root) => match std::fs::read(&real) {
                Ok(body) => Answer {
                    status: "200 OK",
                    kind: media_type(&real),
                    body,
                },
                Err(_) => Answer::plain("404 Not Found", "not here"),
            },
            _ => Answer::plain("404 Not Found", "not here"),
        }
    }
}

impl Answer {
    fn plain(status: &'static str, text: &str) -> Self {
        Self {
            status,
            kind: "text/plain; charset=utf-8",
            body: text.as_bytes().to_vec(),
        }
    }
}

/// The file a request's path names; nothing when the path would leave the folder.
fn place(root: &Path, path: &str) -> Option<PathBuf> {
    let path = percent_decoded(path)?;
    let mut file = root.to_owned();
    for part in path.split('/') {
        match part {
            "" | "." => {}
            ".." => return None,
            part if part.contains(['\\', '\0', ':']) => return None,
            part => file.push(part),
        }
    }
    Some(file)
}

fn percent_decoded(text: &str) -> Option<String> {
    let mut bytes = Vec::with_capacity(text.len());
    let mut rest = text.bytes();
    while let Some(byte) = rest.next() {
        if byte == b'%' {
            let digits = [rest.next()?, rest.next()?];
            let digits = std::str::from_utf8(&digits).ok()?;
            bytes.push(u8::from_str_radix(digits, 16).ok()?);
        } else {
            bytes.push(byte);
        }
    }
    String::from_utf8(bytes).ok()
}

fn media_type(path: &Path) -> &'static str {
    match path.extension().and_then(|ending| ending.to_str()) {
        Some("html") => "text/html; charset=utf-8",
        Some("js") => "text/javascript; charset=utf-8",
        Some("css") => "text/css; charset=utf-8",
        Some("wasm") => "application/wasm",
        Some("json") => "application/json",
        Some("webmanifest") => "application/manifest+json",
        Some("svg") => "image/svg+xml",
        Some("png") => "image/png",
        Some("txt") => "text/plain; charset=utf-8",
        _ => "application/octet-stream",
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A folder of its own for every test: they run at once, and one that writes a page anew shows the others half of it.
    fn folder() -> PathBuf {
        static COUNT: AtomicU64 = AtomicU64::new(0);
        let count = COUNT.fetch_add(1, Ordering::Relaxed);
        let name = format!("reckoner-server-{}-{count}", std::process::id());
        let folder = std::env::temp_dir().join(name);
        std::fs::create_dir_all(folder.join("inner")).expect("a folder for the test");
        std::fs::write(folder.join("index.html"), "<p>page</p>").expect("a page");
        std::fs::write(folder.join("inner/app.wasm"), [0, 97, 115, 109]).expect("a program");
        folder
    }

    fn asked(server: &Server, request: &str) -> String {
        let mut stream = TcpStream::connect(("127.0.0.1", server.port())).expect("a connection");
        stream.write_all(request.as_bytes()).expect("a request");
        let mut answer = Vec::new();
        stream.read_to_end(&mut answer).expect("an answer");
        String::from_utf8_lossy(&answer).into_owned()
    }

    #[test]
    fn a_folder_gives_its_page_and_a_program_its_media_type() {
        let server = Server::start(&folder(), 0).expect("a server");
        let page = asked(&server, "GET / HTTP/1.1\r\n\r\n");
        assert!(page.starts_with("HTTP/1.1 200") && page.ends_with("<p>page</p>"));
        let program = asked(&server, "GET /inner/app.wasm?v=1 HTTP/1.1\r\n\r\n");
        assert!(program.contains("Content-Type: application/wasm\r\n"));
        let head = asked(&server, "HEAD /index.html HTTP/1.1\r\n\r\n");
        assert!(head.contains("Content-Length: 11\r\n") && head.ends_with("\r\n\r\n"));
    }

    #[test]
    fn a_path_that_leaves_the_folder_is_refused() {
        let server = Server::start(&folder(), 0).expect("a server");
        for path in [
            "/../Cargo.toml",
            "/inner/%2e%2e/%2e%2e/etc/passwd",
            "/..%2f..",
            "/%zz",
            "/a%00b",
        ] {
            let answer = asked(&server, &format!("GET {path} HTTP/1.1\r\n\r\n"));
            assert!(answer.starts_with("HTTP/1.1 400"), "{path}: {answer}");
        }
        let answer = asked(&server, "POST / HTTP/1.1\r\n\r\n");
        assert!(answer.starts_with("HTTP/1.1 405"));
    }

    #[test]
    fn under_a_sub_path_only_the_sub_path_answers() {
        let server = Server::start_under(&folder(), 0, "/shop/reckoner/").expect("a server");
        assert!(asked(&server, "GET /shop/reckoner/ HTTP/1.1\r\n\r\n").starts_with("HTTP/1.1 200"));
        assert!(asked(&server, "GET / HTTP/1.1\r\n\r\n").starts_with("HTTP/1.1 404"));
    }

    #[test]
    fn a_stopped_server_closes_idle_connections_and_gives_its_port_back() {
        let server = Server::start(&folder(), 0).expect("a server");
        let port = server.port();
        let mut idle = TcpStream::connect(("127.0.0.1", port)).expect("a connection");
        asked(&server, "GET / HTTP/1.1\r\n\r\n");
        server.stop();
        idle.set_read_timeout(Some(Duration::from_secs(5)))
            .expect("a time limit");
        let closed = !matches!(idle.read(&mut [0; 1]), Ok(1..));
        assert!(closed);
        std::thread::sleep(Duration::from_millis(100));
        assert!(TcpStream::connect(("127.0.0.1", port)).is_err());
    }
}
